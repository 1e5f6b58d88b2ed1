using Microsoft.Extensions.Localization;

namespace Gatewright.App.Frame;

/// <summary>The texts of one part of the app, in the language it was started in.</summary>
/// <typeparam name="T">The part, by the class beside its resource files.</typeparam>
public sealed class Texts<T>(IStringLocalizer<T> found)
{
    /// <summary>A text.</summary>
    /// <exception cref="KeyNotFoundException">There is none of that name: a page without words is a fault of the program.</exception>
    public string this[string name] => Found(found[name]);

    /// <summary>A text with something put in its places.</summary>
    /// <exception cref="KeyNotFoundException">There is none of that name.</exception>
    public string this[string name, params object[] given] => Found(found[name, given]);

    private static string Found(LocalizedString text) => text.ResourceNotFound
        ? throw new KeyNotFoundException($"There is no text {text.Name} among {typeof(T).Name}.")
        : text.Value;
}
