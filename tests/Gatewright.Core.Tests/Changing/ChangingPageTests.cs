using System.Globalization;
using Gatewright.Core.Changing;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Changing;

/// <summary>docs/changing-a-rig.md says what the program does.</summary>
public class ChangingPageTests
{
    private static readonly IReadOnlyList<string> Page = Embedded.Lines("docs/changing-a-rig.md");

    [Fact]
    public void The_table_of_what_is_as_good_as_the_same_is_the_program_s()
    {
        string[] rows = [.. Page.SkipWhile(l => l != "| item | as good as the same |").Skip(2).TakeWhile(l => l.StartsWith('|'))];

        Assert.Equal(
            RigItems.All.Select(i => string.Create(CultureInfo.InvariantCulture, $"| `{i.Word()}` | {i.AsGoodAsSame()} |")),
            rows);
    }

    [Fact]
    public void The_order_of_the_work_is_the_program_s() => Assert.Equal(
        ChangePhases.All.Select(p => p.Word()),
        Page.SkipWhile(l => l != "| phase | why it stands there |").Skip(2).TakeWhile(l => l.StartsWith('|')).Select(l => l.Split('`')[1]));

    [Fact]
    public void An_item_is_found_by_its_word() => Assert.All(RigItems.All, i => Assert.Equal(i, RigItems.OfWord(i.Word())));
}
