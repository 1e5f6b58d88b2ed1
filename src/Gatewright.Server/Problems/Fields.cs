namespace Gatewright.Server.Problems;

/// <summary>Collects what is wrong with the fields of a request.</summary>
internal sealed class Fields
{
    private readonly Dictionary<string, string[]> _errors = [];

    /// <summary>Whether any field is wrong.</summary>
    public bool Any => _errors.Count > 0;

    /// <summary>What is wrong.</summary>
    public IReadOnlyDictionary<string, string[]> Errors => _errors;

    /// <summary>Notes what a field takes, unless it holds.</summary>
    public void Expect(bool holds, string field, string expected)
    {
        if (!holds)
        {
            _errors[field] = _errors.TryGetValue(field, out string[]? before) ? [.. before, expected] : [expected];
        }
    }

    /// <summary>A line of text: not blank, not too long, no control characters.</summary>
    public void ExpectLine(string? value, string field, int longest) => Expect(
        !string.IsNullOrWhiteSpace(value) && value.Length <= longest && !value.Any(char.IsControl),
        field,
        $"1 to {longest} characters on one line");
}
