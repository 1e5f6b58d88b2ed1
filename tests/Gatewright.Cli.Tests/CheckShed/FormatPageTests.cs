using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.CheckShed;

/// <summary>docs/check-format.md and docs/check.schema.json name the same objects and the same keys, in the same order.</summary>
public sealed class FormatPageTests
{
    private static readonly FormatPage s_page = new("docs/check-format.md", "docs/check.schema.json");

    [Fact]
    public void The_page_and_the_schema_have_the_same_objects() => s_page.AssertSameObjects();

    [Fact]
    public void Each_object_has_the_same_keys_on_the_page_as_in_the_schema() => s_page.AssertSameKeys();
}
