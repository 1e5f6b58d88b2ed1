using System.CommandLine;

namespace Gatewright.Cli.Terminals;

/// <summary>For whom an answer is.</summary>
internal enum Form
{
    /// <summary>A person who sees: drawings, and colours where there are any.</summary>
    Drawn,

    /// <summary>A person who hears it read out: one statement a line, no drawing.</summary>
    Plain,

    /// <summary>A program.</summary>
    Json,
}

/// <summary>The <c>--plain</c> and <c>--json</c> that every command has.</summary>
/// <param name="page">The page that describes the command's JSON.</param>
internal sealed class FormOptions(string page = "docs/check-format.md")
{
    private readonly Option<bool> _plain = new("--plain")
    {
        Description = "Words only, one statement a line: for a screen reader.",
    };

    private readonly Option<bool> _json = new("--json")
    {
        Description = $"For programs: JSON, as {page} describes it.",
    };

    public void AddTo(Command command)
    {
        command.Add(_plain);
        command.Add(_json);
        command.Validators.Add(result =>
        {
            if (result.GetValue(_plain) && result.GetValue(_json))
            {
                result.AddError("--plain and --json exclude each other.");
            }
        });
    }

    public Form Of(ParseResult result) =>
        result.GetValue(_json) ? Form.Json : result.GetValue(_plain) ? Form.Plain : Form.Drawn;
}
