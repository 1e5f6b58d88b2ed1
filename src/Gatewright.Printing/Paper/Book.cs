using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Gatewright.Printing.Paper;

/// <summary>A document while it is printed.</summary>
internal sealed class Book : IDisposable
{
    private readonly PdfDocument _document = new();
    private readonly List<Leaf> _leaves = [];
    private readonly Dictionary<Lettering, XFont> _fonts = [];

    /// <summary>An empty one.</summary>
    public Book(Imprint imprint, string title)
    {
        Imprint = imprint;
        Title = title;
        _document.Info.Title = $"{title} – {imprint.Club}";
        _document.Info.Creator = "Gatewright";
        _document.Language = imprint.Say.Language.Tag;
    }

    /// <summary>What every page says of itself.</summary>
    public Imprint Imprint { get; }

    /// <summary>What the document is.</summary>
    public string Title { get; }

    /// <summary>Its pages so far.</summary>
    public IReadOnlyList<Leaf> Leaves => _leaves;

    /// <summary>Another page.</summary>
    public Leaf Add(PageFormat format)
    {
        PdfPage page = _document.AddPage();
        page.Width = XUnit.FromMillimeter(format.Width);
        page.Height = XUnit.FromMillimeter(format.Height);
        var leaf = new Leaf(this, XGraphics.FromPdfPage(page), format);
        _leaves.Add(leaf);
        return leaf;
    }

    /// <summary>The font of some lettering, made once.</summary>
    public XFont Font(Lettering lettering)
    {
        if (!_fonts.TryGetValue(lettering, out XFont? font))
        {
            _fonts.Add(lettering, font = lettering.Font);
        }

        return font;
    }

    /// <summary>The document as a PDF.</summary>
    public byte[] Close()
    {
        foreach (Leaf leaf in _leaves)
        {
            leaf.Dispose();
        }

        using var to = new MemoryStream();
        _document.Save(to, closeStream: false);
        return to.ToArray();
    }

    /// <inheritdoc/>
    public void Dispose() => _document.Dispose();
}
