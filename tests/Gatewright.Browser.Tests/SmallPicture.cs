using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;

namespace Gatewright.Browser.Tests;

/// <summary>
/// Pictures of screens for the documentation, at a third of the size: a browser's own are quickly packed and in full colour,
/// where flat surfaces and smoothed letters do with 256 (PNG, third edition, ISO/IEC 15948, colour type 3).
/// </summary>
internal static class SmallPicture
{
    private const int Colours = 256;
    private static readonly byte[] Signature = [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A];

    /// <summary>The same picture in its 256 most common colours; every other one becomes the nearest of these.</summary>
    /// <param name="png">A picture of 8 bits a channel, without interlacing, as browsers write it.</param>
    public static byte[] Of(byte[] png)
    {
        (int width, int height, int[] pixels) = Read(png);
        int[] palette = [.. pixels.CountBy(p => p).OrderByDescending(c => c.Value).Take(Colours).Select(c => c.Key)];
        var places = palette.Select((colour, place) => (colour, place)).ToDictionary(c => c.colour, c => (byte)c.place);
        byte[] rows = new byte[height * (width + 1)];
        for (int i = 0; i < pixels.Length; i++)
        {
            if (!places.TryGetValue(pixels[i], out byte place))
            {
                place = places[pixels[i]] = (byte)Nearest(palette, pixels[i]);
            }

            rows[(i / width * (width + 1)) + 1 + (i % width)] = place;
        }

        using var written = new MemoryStream();
        written.Write(Signature);
        byte[] head = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(head, width);
        BinaryPrimitives.WriteInt32BigEndian(head.AsSpan(4), height);
        (head[8], head[9]) = (8, 3);
        Chunk(written, "IHDR", head);
        Chunk(written, "PLTE", [.. palette.SelectMany(c => (byte[])[(byte)(c >> 16), (byte)(c >> 8), (byte)c])]);
        using var packed = new MemoryStream();
        using (var packer = new ZLibStream(packed, CompressionLevel.SmallestSize, leaveOpen: true))
        {
            packer.Write(rows);
        }

        Chunk(written, "IDAT", packed.ToArray());
        Chunk(written, "IEND", []);
        return written.ToArray();
    }

    private static int Nearest(int[] palette, int colour) => Enumerable.Range(0, palette.Length).MinBy(i =>
        Square((palette[i] >> 16) - (colour >> 16)) + Square((palette[i] >> 8 & 255) - (colour >> 8 & 255)) + Square((palette[i] & 255) - (colour & 255)));

    private static int Square(int value) => value * value;

    private static void Chunk(Stream to, string name, byte[] data)
    {
        byte[] body = [.. Encoding.ASCII.GetBytes(name), .. data];
        byte[] number = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(number, data.Length);
        to.Write(number);
        to.Write(body);
        BinaryPrimitives.WriteUInt32BigEndian(number, Check(body));
        to.Write(number);
    }

    /// <summary>The check of a chunk, as the standard's own annex has it.</summary>
    private static uint Check(byte[] body)
    {
        uint check = uint.MaxValue;
        foreach (byte part in body)
        {
            check ^= part;
            for (int bit = 0; bit < 8; bit++)
            {
                check = (check & 1) == 0 ? check >> 1 : 0xEDB88320 ^ (check >> 1);
            }
        }

        return ~check;
    }

    private static (int Width, int Height, int[] Pixels) Read(byte[] png)
    {
        int width = 0, height = 0, bytes = 3;
        using var packed = new MemoryStream();
        for (int at = Signature.Length; at < png.Length;)
        {
            int length = BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at));
            string name = Encoding.ASCII.GetString(png, at + 4, 4);
            Span<byte> data = png.AsSpan(at + 8, length);
            if (name == "IHDR")
            {
                (width, height, bytes) = (BinaryPrimitives.ReadInt32BigEndian(data), BinaryPrimitives.ReadInt32BigEndian(data[4..]), data[9] == 6 ? 4 : 3);
            }
            else if (name == "IDAT")
            {
                packed.Write(data);
            }

            at += length + 12;
        }

        packed.Position = 0;
        using var unpacked = new ZLibStream(packed, CompressionMode.Decompress);
        byte[] before = new byte[width * bytes], row = new byte[width * bytes];
        int[] pixels = new int[width * height];
        for (int y = 0; y < height; y++)
        {
            int filter = unpacked.ReadByte();
            unpacked.ReadExactly(row);
            for (int i = 0; i < row.Length; i++)
            {
                int left = i < bytes ? 0 : row[i - bytes], above = before[i], corner = i < bytes ? 0 : before[i - bytes];
                row[i] += (byte)(filter switch { 1 => left, 2 => above, 3 => (left + above) / 2, 4 => Paeth(left, above, corner), _ => 0 });
            }

            for (int x = 0; x < width; x++)
            {
                pixels[(y * width) + x] = row[x * bytes] << 16 | row[(x * bytes) + 1] << 8 | row[(x * bytes) + 2];
            }

            (before, row) = (row, before);
        }

        return (width, height, pixels);
    }

    private static int Paeth(int left, int above, int corner)
    {
        int guess = left + above - corner;
        (int a, int b, int c) = (Math.Abs(guess - left), Math.Abs(guess - above), Math.Abs(guess - corner));
        return a <= b && a <= c ? left : b <= c ? above : corner;
    }
}
