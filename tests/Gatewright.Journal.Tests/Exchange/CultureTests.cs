using System.Globalization;
using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Tests.Exchange;

/// <summary>The format is the same wherever the machine stands.</summary>
public sealed class CultureTests
{
    /// <summary>A decimal comma and day first; a dotless i; digits, calendar and minus sign of their own.</summary>
    public static TheoryData<string> Cultures => ["de-DE", "tr-TR", "fa-IR", "sv-SE"];

    [Theory]
    [MemberData(nameof(Cultures))]
    public void Reading_writing_and_messages_do_not_depend_on_the_culture(string name)
    {
        string text = Csv.Rows(
            "KESTREL,4-,1,STARBOARD,PIN-AFT,,-4.5,INVERTED,0.3,-0.1,,2026-05-04,",
            "Kestrel,4-,1,starboard,gate,-20.5,4.5,inverted,,,,4.5.2026,",
            "Ilex,1x,1,starboard,gate,catch,4.5,,,,,,",
            "ilex,1x,1,port,gate,catch,4.5,,,,,,",
            "ILEX,1x,1,port,gate,finish,4.5,,,,,,");
        string faulty = Csv.Rows("Kestrel,4-,9,port,gate,x,45,upright,0.25,31,,1.2.26,", "Kestrel,4-,1,port,gate,catch,1,,0.5,-1.5,,,",
            "Kestrel,4-,1,port,gate,catch,1,,0.25,-1,,,", "Kestrel,4-,1,port,gate,catch,1,,,,,,");
        (string Written, string Errors, IReadOnlyList<BoatReadings> Boats) here = In(CultureInfo.InvariantCulture, text, faulty);
        (string Written, string Errors, IReadOnlyList<BoatReadings> Boats) there = In(CultureInfo.GetCultureInfo(name), text, faulty);
        Assert.Equal(here.Written, there.Written);
        Assert.Equal(here.Errors, there.Errors);
        Csv.AssertSame(here.Boats, there.Boats);
        Assert.Equal(["KESTREL", "Ilex"], there.Boats.Select(b => b.Boat));
    }

    [Fact]
    public void The_cultures_differ_on_this_machine() =>
        Assert.Equal(["1,5", "1,5"], new[] { "de-DE", "tr-TR" }.Select(n => 1.5.ToString(CultureInfo.GetCultureInfo(n))));

    private static (string Written, string Errors, IReadOnlyList<BoatReadings> Boats) In(CultureInfo culture, string text, string faulty)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = culture;
            IReadOnlyList<BoatReadings> boats = Csv.BoatsOf(text);
            return (RoundTripTests.Written(boats), Csv.ErrorsOf(faulty), boats);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
