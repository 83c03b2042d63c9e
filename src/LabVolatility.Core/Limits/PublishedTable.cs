using System.Reflection;

namespace LabVolatility.Core.Limits;

/// <summary>Reads the tables under Published: comment lines with '#', a header, then rows parted by semicolons.</summary>
internal static class PublishedTable
{
    public static IReadOnlyList<PublishedRow> Read(string file)
    {
        var assembly = Assembly.GetExecutingAssembly();
        using var stream = assembly.GetManifestResourceStream($"LabVolatility.Core.Published.{file}")
            ?? throw new InvalidDataException($"The table {file} isn't in the program.");
        using var reader = new StreamReader(stream);
        var lines = reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Where(line => !line.StartsWith('#')).Select(line => line.Split(';')).ToList();
        return lines.All(cells => cells.Length == lines[0].Length)
            ? [.. lines.Skip(1).Select(cells => new PublishedRow(lines[0], cells))]
            : throw new InvalidDataException($"The table {file} has a row that doesn't fit its header.");
    }
}
