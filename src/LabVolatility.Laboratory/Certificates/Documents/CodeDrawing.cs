using PdfSharp.Drawing;
using QRCoder;

namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>Draws bar codes and square codes as black rectangles, sharp at any printer's resolution.</summary>
internal static class CodeDrawing
{
    /// <summary>A Code 128 whose first bar begins at <paramref name="left"/>; ten modules beside it stay white.</summary>
    /// <returns>Its width in points.</returns>
    public static double Bars(XGraphics graphics, string text, double left, double top, double module, double height)
    {
        var modules = Code128.Modules(text);
        foreach (var (start, length) in Runs(modules))
            graphics.DrawRectangle(XBrushes.Black, left + (start * module), top, length * module, height);
        return modules.Count * module;
    }

    /// <summary>A QR code with its quiet zone within a square of <paramref name="side"/> points.</summary>
    public static void Square(XGraphics graphics, string text, double left, double top, double side)
    {
        using var generator = new QRCodeGenerator();
        using var code = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.M);
        var module = side / code.ModuleMatrix.Count;
        var path = new XGraphicsPath { FillMode = XFillMode.Winding };
        for (var row = 0; row < code.ModuleMatrix.Count; row++)
            foreach (var (start, length) in Runs([.. code.ModuleMatrix[row].Cast<bool>()]))
                path.AddRectangle(left + (start * module), top + (row * module), length * module, module);
        graphics.DrawPath(XBrushes.Black, path);
    }

    private static IEnumerable<(int Start, int Length)> Runs(IReadOnlyList<bool> modules)
    {
        for (var at = 0; at < modules.Count;)
        {
            var length = modules.Skip(at).TakeWhile(black => black == modules[at]).Count();
            if (modules[at])
                yield return (at, length);
            at += length;
        }
    }
}
