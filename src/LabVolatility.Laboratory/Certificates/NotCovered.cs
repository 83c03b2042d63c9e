namespace LabVolatility.Laboratory.Certificates;

/// <summary>A tank that a cargo certificate no longer covers, and why.</summary>
public sealed record NotCovered(string Tank, string Batch, string Why)
{
    public string Text => $"tank {Tank} (batch {Batch} {Why})";
}
