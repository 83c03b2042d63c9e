namespace LabVolatility.Laboratory.Certificates;

/// <summary>A cargo certificate to be signed.</summary>
public sealed record CargoRequest
{
    /// <summary>The same id sent again issues nothing twice.</summary>
    public required Guid CommandId { get; init; }

    /// <summary>The certificate that this one replaces, or null for a new one.</summary>
    public string? Replaces { get; init; }

    /// <summary>The revision of it that the signer saw.</summary>
    public int ReplacesRevision { get; init; }

    public string? ReplacesWhy { get; init; }

    public string? Ship { get; init; }

    public string? Voyage { get; init; }

    public string? Port { get; init; }

    public string? Berth { get; init; }

    public LoadingStage Stage { get; init; }

    public string? Product { get; init; }

    public string? WhyGradesDiffer { get; init; }

    public string? Reference { get; init; }

    public string? Remarks { get; init; }

    public required IReadOnlyList<CargoTankRequest> Tanks { get; init; }

    public string Password { get; init; } = "";

    // A record prints its members: the password must not reach a log that way.
    public override string ToString() => $"Cargo certificate of {Ship}, {Tanks.Count} tanks";
}
