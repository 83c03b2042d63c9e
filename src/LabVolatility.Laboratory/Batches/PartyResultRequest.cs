namespace LabVolatility.Laboratory.Batches;

/// <summary>Another party's result as it stands on their report.</summary>
public sealed record PartyResultRequest
{
    /// <summary>The same id sent again enters nothing twice.</summary>
    public Guid CommandId { get; init; } = Guid.NewGuid();
    public required string Batch { get; init; }
    public PartyKind Kind { get; init; }
    public string? Party { get; init; }
    public string? Laboratory { get; init; }

    /// <summary>Number of our sample that was split; null where it isn't known.</summary>
    public string? Sample { get; init; }
    public string? Quantity { get; init; }

    /// <summary>"ASTM", "EN", "EPA", "CARB"; null: EPA's for RVP, else the method's own.</summary>
    public string? Correlation { get; init; }
    public string? Method { get; init; }
    public string? Edition { get; init; }

    /// <summary>The value as typed, with its unit: "62.4 kPa"; kPa where none is typed.</summary>
    public string? Value { get; init; }
    public int Count { get; init; } = 1;
    public bool Hazy { get; init; }
    public DateOnly? MeasuredOn { get; init; }
    public string? Reference { get; init; }

    /// <summary>Seal numbers, parted by commas.</summary>
    public string? Seals { get; init; }
}
