namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>The text of one cell; a line feed begins a new line.</summary>
internal sealed record TableCell(string Text, bool Bold = false)
{
    public static implicit operator TableCell(string? text) => new(text ?? string.Empty);

    /// <summary>The parts that say something, each on a line of its own.</summary>
    public static TableCell Of(params ReadOnlySpan<string?> lines)
    {
        List<string> said = [];
        foreach (var line in lines)
            if (!string.IsNullOrWhiteSpace(line))
                said.Add(line);
        return new TableCell(string.Join('\n', said));
    }
}
