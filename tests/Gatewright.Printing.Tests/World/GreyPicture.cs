using System.Globalization;
using System.Text;

namespace Gatewright.Printing.Tests.World;

/// <summary>A page as a picture: a byte a dot, 0 black.</summary>
internal sealed record GreyPicture(int Width, int Height, byte[] Dots)
{
    private const byte Ink = 200;

    public bool IsInk(int x, int y) => Dots[(y * Width) + x] < Ink;

    /// <summary>The part of a page's dots that are ink.</summary>
    public double Blackness => Dots.Count(d => d < 128) / (double)Dots.Length;

    /// <summary>The edges of all ink: left, top, right, bottom, in dots; null on a blank page.</summary>
    public (int Left, int Top, int Right, int Bottom)? InkBox()
    {
        (int left, int top, int right, int bottom) = (Width, Height, -1, -1);
        for (int y = 0; y < Height; y++)
        {
            for (int x = 0; x < Width; x++)
            {
                if (IsInk(x, y))
                {
                    (left, top, right, bottom) = (Math.Min(left, x), Math.Min(top, y), Math.Max(right, x), Math.Max(bottom, y));
                }
            }
        }

        return right < 0 ? null : (left, top, right, bottom);
    }

    /// <summary>Reads a binary grey map: "P5", width, height, 255, then the dots.</summary>
    public static GreyPicture Read(string path)
    {
        byte[] file = File.ReadAllBytes(path);
        int at = 0;
        string[] head = [.. Enumerable.Range(0, 4).Select(_ => Next())];
        Assert.Equal("P5", head[0]);
        return new(int.Parse(head[1], CultureInfo.InvariantCulture), int.Parse(head[2], CultureInfo.InvariantCulture), file[at..]);

        string Next()
        {
            var text = new StringBuilder();
            while (!char.IsWhiteSpace((char)file[at]))
            {
                text.Append((char)file[at++]);
            }

            at++;
            return text.ToString();
        }
    }
}
