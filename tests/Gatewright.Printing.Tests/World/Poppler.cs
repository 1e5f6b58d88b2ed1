using System.Diagnostics;
using System.Globalization;
using System.Xml.Linq;

namespace Gatewright.Printing.Tests.World;

/// <summary>
/// A printed document as a program that had no part in it sees it: poppler's text, fonts, places of words, and pictures.
/// </summary>
internal sealed class Poppler : IDisposable
{
    private const double MmAPoint = 25.4 / 72;

    private readonly string _folder = Directory.CreateTempSubdirectory("gw-print-").FullName;

    public Poppler(byte[] pdf)
    {
        File.WriteAllBytes(Pdf, pdf);
        string kept = Environment.GetEnvironmentVariable("GATEWRIGHT_PICTURES") ?? string.Empty;
        Kept = kept.Length > 0 ? Directory.CreateDirectory(kept).FullName : null;
    }

    /// <summary>Where pictures are kept to be looked at; null for nowhere.</summary>
    public string? Kept { get; }

    private string Pdf => Path.Combine(_folder, "printed.pdf");

    /// <summary>The text, page after page, as it is read.</summary>
    public string Text() => Run("pdftotext", "-layout", "-enc", "UTF-8", Pdf, "-");

    /// <summary>The text, blanks and line ends all one blank: what is said, wherever its lines break.</summary>
    public string Said() => string.Join(' ', Run("pdftotext", "-raw", "-enc", "UTF-8", Pdf, "-").Split((char[])[' ', '\n', '\r', '\f'], StringSplitOptions.RemoveEmptyEntries));

    /// <summary>The fonts: name, and whether each is embedded and can be read as text.</summary>
    public IReadOnlyList<(string Name, bool IsEmbedded, bool HasUnicode)> Fonts() =>
        [.. Run("pdffonts", Pdf).Split('\n').Skip(2).Where(line => line.Length > 70).Select(line =>
        {
            string[] cells = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            return (cells[0], cells[^5] == "yes", cells[^3] == "yes");
        })];

    /// <summary>Every word with its box in millimetres from the top left, page by page.</summary>
    public IReadOnlyList<Page> Pages()
    {
        string html = Run("pdftotext", "-bbox", "-enc", "UTF-8", Pdf, "-");
        int from = html.IndexOf("<doc>", StringComparison.Ordinal);
        int to = html.IndexOf("</doc>", StringComparison.Ordinal) + "</doc>".Length;
        return [.. XElement.Parse(html[from..to]).Elements("page").Select(page => new Page(
            Mm(page, "width"),
            Mm(page, "height"),
            [.. page.Elements("word").Select(w => new Word(w.Value, Mm(w, "xMin"), Mm(w, "yMin"), Mm(w, "xMax"), Mm(w, "yMax")))]))];
    }

    /// <summary>The pages as pictures of so many dots an inch.</summary>
    public IReadOnlyList<GreyPicture> Pictures(int dotsAnInch, string name)
    {
        Run("pdftoppm", "-gray", "-r", dotsAnInch.ToString(CultureInfo.InvariantCulture), Pdf, Path.Combine(_folder, "page"));
        if (Kept is not null)
        {
            Run("pdftoppm", "-png", "-r", "80", Pdf, Path.Combine(Kept, name));
        }

        return [.. Directory.EnumerateFiles(_folder, "page*.pgm").Order(StringComparer.Ordinal).Select(GreyPicture.Read)];
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private static double Mm(XElement element, string attribute) =>
        double.Parse(element.Attribute(attribute)!.Value, CultureInfo.InvariantCulture) * MmAPoint;

    private static string Run(string program, params string[] args)
    {
        using Process process = Process.Start(new ProcessStartInfo(program, args)
        {
            RedirectStandardOutput = true, RedirectStandardError = true, StandardOutputEncoding = System.Text.Encoding.UTF8,
        })!;
        Task<string> error = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"{program} ended with {process.ExitCode}: {error.Result}");
        return output;
    }
}

/// <summary>A page: its size in millimetres, and its words.</summary>
internal sealed record Page(double Width, double Height, IReadOnlyList<Word> Words);

/// <summary>A word and its box in millimetres.</summary>
internal sealed record Word(string Text, double Left, double Top, double Right, double Bottom);
