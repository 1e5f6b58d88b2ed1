using System.Globalization;
using System.Resources;

namespace Gatewright.App.Frame;

/// <summary>The texts of one part of the app, in the language it was started in.</summary>
/// <typeparam name="T">The part, by the class beside its resource files.</typeparam>
public sealed class Texts<T>
{
    private static readonly ResourceManager Files = new(typeof(T));

    /// <summary>A text.</summary>
    /// <exception cref="KeyNotFoundException">There is none of that name: a page without words is a fault of the program.</exception>
    public string this[string name] => Files.GetString(name, CultureInfo.CurrentUICulture)
        ?? throw new KeyNotFoundException($"There is no text {name} among {typeof(T).Name}.");

    /// <summary>A text with something put in its places.</summary>
    /// <exception cref="KeyNotFoundException">There is none of that name.</exception>
    public string this[string name, params object[] given] => string.Format(CultureInfo.CurrentCulture, this[name], given);
}
