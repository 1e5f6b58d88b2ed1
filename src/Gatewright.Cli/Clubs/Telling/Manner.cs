using System.CommandLine;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Clubs.Telling;

/// <summary>In which form, and how wide, to answer.</summary>
/// <param name="Form">The form.</param>
/// <param name="Width">Columns to write in; null leaves it to the terminal.</param>
internal sealed record Manner(Form Form, int? Width);

/// <summary>The options that say it.</summary>
internal sealed class MannerOptions
{
    private readonly FormOptions _form = new("docs/club.md");
    private readonly Option<int?> _width = WidthOption.Make();

    public void AddTo(Command command)
    {
        command.Add(_width);
        _form.AddTo(command);
    }

    public Manner Of(ParseResult result) => new(_form.Of(result), result.GetValue(_width));
}
