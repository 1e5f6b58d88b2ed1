using Gatewright.Printing.Paper;
using QRCoder;

namespace Gatewright.Printing.Drawn;

/// <summary>A QR code (ISO/IEC 18004) drawn as its modules, so that it stays sharp at any size.</summary>
internal sealed class CodeSquare
{
    /// <summary>White modules around it: the standard asks for four.</summary>
    public const int Quiet = 4;

    /// <summary>
    /// The smallest module, millimetres: under 0.35 a phone's camera that cannot come closer than 10 cm has fewer than three
    /// pixels for one (a rule of thumb, ours).
    /// </summary>
    public const double LeastModule = 0.35;

    private readonly QRCodeData _data;

    private CodeSquare(QRCodeData data) => _data = data;

    /// <summary>Modules along a side, the quiet ones included.</summary>
    public int Modules => _data.ModuleMatrix.Count;

    /// <summary>A code for a text. A quarter of it may be scratched or dirty (level Q) and it still reads.</summary>
    public static CodeSquare Of(string text)
    {
        using var generator = new QRCodeGenerator();
        return new(generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.Q));
    }

    /// <summary>Draws it in a square, quiet edge and all. Modules in a row are one bar: fewer edges for a printer to blur.</summary>
    public void Draw(Leaf leaf, double x, double y, double side)
    {
        double module = side / Modules;
        for (int row = 0; row < Modules; row++)
        {
            System.Collections.BitArray line = _data.ModuleMatrix[row];
            for (int from = 0; from < Modules; from++)
            {
                int to = from;
                while (to < Modules && line[to])
                {
                    to++;
                }

                if (to > from)
                {
                    leaf.Bar(x + (from * module), y + (row * module), (to - from) * module, module);
                    from = to;
                }
            }
        }
    }
}
