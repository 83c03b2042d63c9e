using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Samples;

/// <summary>A grade of product with the tests it is assigned and the rule its batches are judged by.</summary>
public sealed class Grade : IRecorded
{
    public required string Code { get; init; }
    public required string Name { get; set; }
    public SampleKind Kind { get; set; }
    public ProductState State { get; set; }
    public IReadOnlyList<GradeTest> Tests { get; set; } = [];

    /// <summary>How results are held against limits, agreed before testing.</summary>
    public DecisionRule Rule { get; set; }

    /// <summary>One-sided confidence of guarded acceptance, above 0.5 and below 1.</summary>
    public decimal Confidence { get; set; } = 0.95m;

    /// <summary>Results in all once duplicates differ by more than r (ISO 4259-2).</summary>
    public int ResultsInAll { get; set; } = 10;

    /// <summary>What is done when results don't settle the matter, agreed before testing.</summary>
    public RetestTree Tree { get; set; } = RetestTree.CommonPractice;

    /// <summary>What was agreed with inspectors and recipients.</summary>
    public PartyAgreement Parties { get; set; } = PartyAgreement.Usual;

    public bool Active { get; set; } = true;
    public Guid Version { get; set; }
}
