using System.Globalization;
using System.Text.Json;

namespace Gatewright.Journal.Exchange;

/// <summary>Takes down what is wrong with a JSON file, by the path at which it stands.</summary>
internal sealed class JsonReporter(string source)
{
    private readonly List<InputProblem> _errors = [];
    private readonly List<InputProblem> _warnings = [];

    public IReadOnlyList<InputProblem> Errors => _errors;

    public IReadOnlyList<InputProblem> Warnings => _warnings;

    public void TooLong(int longest, string what) => _errors.Add(new(
        source, null, null, null, string.Create(CultureInfo.InvariantCulture, $"longer than {longest:N0} bytes: this is not {what}.")));

    public void NotUtf8() => _errors.Add(new(
        source, null, null, null, "holds bytes that are not UTF-8: save it in that encoding."));

    public void NotJson(JsonException fault)
    {
        long character = (fault.BytePositionInLine ?? 0) + 1;
        _errors.Add(new(
            source,
            (int)(fault.LineNumber ?? 0) + 1,
            null,
            null,
            string.Create(CultureInfo.InvariantCulture, $"not JSON from about character {character} of this line on: look for a missing comma, quote mark or bracket.")));
    }

    public void NotText() => _errors.Add(new(
        source, null, null, null, "has an escaped character in it that is only half of one: type the text itself instead of \\u and a number."));

    public void Error(string path, JsonElement value, string message) => _errors.Add(Problem(path, value, message));

    public void Missing(string path, string message) => _errors.Add(new(source, null, path, null, message));

    public void Warn(string path, JsonElement value, string message) => _warnings.Add(Problem(path, value, message));

    /// <summary>Looks for keys that do not belong, and for those that stand twice.</summary>
    public void CheckKeys(string path, JsonElement parent, IReadOnlyList<string> known)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (JsonProperty property in parent.EnumerateObject())
        {
            string at = $"{path}.{ShownText.Of(property.Name)}";
            if (!seen.Add(property.Name))
            {
                Missing(at, "stands there more than once: keep one.");
            }
            else if (!known.Contains(property.Name))
            {
                string expected = NearestName.Of(property.Name, known) is string near
                    ? $"did you mean {near}?"
                    : $"expected {string.Join(", ", known)}.";
                Missing(at, $"not a key of this format: {expected}");
            }
        }
    }

    private InputProblem Problem(string path, JsonElement value, string message) => new(
        source, null, path, ShownText.Of(value.ValueKind == JsonValueKind.String ? value.GetString() : value.GetRawText()), message);
}
