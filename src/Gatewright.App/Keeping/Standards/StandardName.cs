using Gatewright.App.Frame;
using Gatewright.Core.Judging;

namespace Gatewright.App.Keeping.Standards;

/// <summary>What a standard is called: those built in have a word in each language, a club's own the name it gave.</summary>
public static class StandardName
{
    /// <summary>A standard as it is known to what it judges: one built in is called by its key.</summary>
    public static string Of(Standard standard, Texts<StandardsTexts> texts)
    {
        ArgumentNullException.ThrowIfNull(standard);
        return Of(standard.Name, standard, texts);
    }

    /// <summary>A standard under a key: a club's own may stand in the place of one built in.</summary>
    public static string Of(string key, Standard standard, Texts<StandardsTexts> texts)
    {
        ArgumentNullException.ThrowIfNull(standard);
        ArgumentNullException.ThrowIfNull(texts);
        return Standard.BuiltIn.Any(b => b.Name == key && b.Name == standard.Name) ? texts[key] : standard.Name;
    }
}
