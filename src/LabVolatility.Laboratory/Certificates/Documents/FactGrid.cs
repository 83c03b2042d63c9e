namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>Names and values in two columns, read across.</summary>
internal static class FactGrid
{
    private const double Gutter = 14;
    private const double NameWidth = 80;

    /// <summary>A fact whose value is null or blank is left out.</summary>
    public static void Write(PageFlow flow, params IReadOnlyList<(string Name, string? Value)> facts)
    {
        var column = (PageFlow.Width - Gutter) / 2;
        var line = TypeFaces.LineHeight(flow.Faces.Body);
        foreach (var pair in facts.Where(f => !string.IsNullOrWhiteSpace(f.Value)).Chunk(2))
        {
            var values = pair
                .Select(f => flow.Ruler.Lines(f.Value ?? string.Empty, flow.Faces.BodyBold, column - NameWidth))
                .ToArray();
            var height = values.Max(v => v.Count) * line;
            flow.Need(Math.Min(height, PageFlow.WholePage));
            for (var at = 0; at < pair.Length; at++)
            {
                var left = PageFlow.Left + (at * (column + Gutter));
                flow.Put(pair[at].Name, flow.Faces.Body, left);
                Values(flow, values[at], left + NameWidth, line);
            }

            flow.Top += height + 1;
        }
    }

    private static void Values(PageFlow flow, IReadOnlyList<string> lines, double left, double line)
    {
        var top = flow.Top;
        foreach (var text in lines)
        {
            flow.Put(text, flow.Faces.BodyBold, left);
            flow.Top += line;
        }

        flow.Top = top;
    }
}
