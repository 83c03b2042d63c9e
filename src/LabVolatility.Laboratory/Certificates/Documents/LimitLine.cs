namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>One edge of one limit, and what was compared with it.</summary>
public sealed record LimitLine
{
    public required string Quantity { get; init; }

    public required LimitEdge Edge { get; init; }

    public required string Unit { get; init; }

    /// <summary>The limit before the allowance, with its zeros.</summary>
    public required string Base { get; init; }

    /// <summary>The ethanol allowance, or null where none was applied.</summary>
    public string? Allowance { get; init; }

    public required string Effective { get; init; }

    /// <summary>Designation, edition, clause or table; for a contract, its name.</summary>
    public required string Source { get; init; }

    /// <summary>"legal", "contract" or "internal".</summary>
    public required string Standing { get; init; }

    /// <summary>True prints that the figure is from memory and not yet confirmed by the laboratory.</summary>
    public bool FromMemory { get; init; }

    /// <summary>Area, point of compliance and season that the limit belongs to.</summary>
    public string? AppliesTo { get; init; }

    /// <summary>The samples whose results were compared.</summary>
    public IReadOnlyList<string> SampleNumbers { get; init; } = [];

    /// <summary>The method that answers the limit; null where no result does.</summary>
    public string? Method { get; init; }

    public string? Correlation { get; init; }

    /// <summary>The value as compared; null where there is none.</summary>
    public string? Compared { get; init; }

    /// <summary>In words: see <see cref="DecisionRuleWords"/>.</summary>
    public required string Rule { get; init; }

    /// <summary>Distance to the effective limit in the limit's unit, signed; null where nothing was compared.</summary>
    public string? Margin { get; init; }

    public required LimitOutcome Outcome { get; init; }

    /// <summary>Why it came out so, where that is not plain; printed under the rule.</summary>
    public string? Why { get; init; }
}
