using PdfSharp.Fonts;

namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>Gives every document the fonts that ship with the program, whatever the machine has.</summary>
internal sealed class DocumentFonts : IFontResolver
{
    public const string Family = "DejaVu Sans Condensed";

    private const string Regular = "DejaVuSansCondensed.ttf";
    private const string Bold = "DejaVuSansCondensed-Bold.ttf";

    private static readonly Lock Gate = new();

    /// <summary>To be called before a document is begun; PDFsharp knows one resolver a process.</summary>
    public static void Ensure()
    {
        lock (Gate)
            GlobalFontSettings.FontResolver ??= new DocumentFonts();
    }

    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) =>
        familyName == Family ? new FontResolverInfo(bold ? Bold : Regular) : null;

    public byte[]? GetFont(string faceName)
    {
        var name = "LabVolatility.Laboratory.Certificates.Fonts." + faceName;
        using var stream = typeof(DocumentFonts).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The font {faceName} is not in the program.");
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return copy.ToArray();
    }
}
