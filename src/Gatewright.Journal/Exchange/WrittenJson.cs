using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Gatewright.Journal.Exchange;

/// <summary>How every document for programs is written: to be read by people too, the same document always as the same bytes.</summary>
public static class WrittenJson
{
    /// <summary>Options for one context, which keeps them for itself.</summary>
    /// <param name="leftOut">When a value is left out; if nothing is said, never.</param>
    public static JsonSerializerOptions Options(JsonIgnoreCondition leftOut = JsonIgnoreCondition.Never) => new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        DefaultIgnoreCondition = leftOut,
        WriteIndented = true,
        NewLine = "\n",

        // ° and ± stay readable, and so do names and a class such as 8+; the text is never put into a web page as it is.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };
}
