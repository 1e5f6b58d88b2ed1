using System.Globalization;
using Gatewright.Journal.Learning;

namespace Gatewright.Journal.Tests.Exchange.ChancesFiles;

/// <summary>docs/chances.md says what the program holds.</summary>
public sealed class ChancesPageTests
{
    private static readonly MarkdownTable s_numbers = MarkdownTable.Of("chances.md", "number");

    [Fact]
    public void Every_number_stands_on_the_page_in_its_order() =>
        Assert.Equal(ChanceNumbers.All.Select(n => n.Key), s_numbers.Codes("number").Select(c => Assert.Single(c)));

    [Fact]
    public void Its_defaults_are_those_of_the_program() => Assert.Equal(
        ChanceNumbers.All.Select(n => n.Default), s_numbers["default"].Select(d => double.Parse(d, CultureInfo.InvariantCulture)));

    [Fact]
    public void Its_ranges_and_meanings_are_those_of_the_program()
    {
        Assert.Equal(ChanceNumbers.All.Select(n => n.Range.ToString()), s_numbers["allowed"]);
        Assert.Equal(ChanceNumbers.All.Select(n => n.Meaning), s_numbers["meaning"]);
    }

    /// <summary>A number added to the chances or to the likelihoods finds its place in the table, or this fails.</summary>
    [Fact]
    public void No_number_of_the_chances_and_likelihoods_is_left_out()
    {
        int chances = typeof(Gatewright.Core.Diagnosing.PriorChances).GetProperties().Count(p => p.PropertyType == typeof(double) && p.CanWrite);
        Type reports = typeof(Gatewright.Core.Diagnosing.ReportLikelihoods);
        int curves = reports.GetProperties().Count(p => p.PropertyType == typeof(Gatewright.Core.Diagnosing.ReportCurve));
        int likelihoods = reports.GetProperties().Count(p => p.PropertyType == typeof(double));
        Assert.Equal(chances + likelihoods + (4 * curves), ChanceNumbers.All.Count);
    }
}
