using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Samples;

/// <summary>One drawing of product at one level, in one or more containers.</summary>
public sealed class Sample : IRecorded
{
    public Guid Id { get; init; }

    /// <summary>The number on the label, with its check character; never used twice.</summary>
    public required string Number { get; init; }
    public required string GradeCode { get; init; }
    public Guid? BatchId { get; set; }
    public string? TankCode { get; set; }
    public string? SamplePointCode { get; set; }
    public SampleLevel Level { get; init; }
    public SampleState State { get; set; }

    /// <summary>When it was drawn; of an announced one, when it is called for, until it is received.</summary>
    public DateTimeOffset SampledAt { get; set; }

    /// <summary>Who drew it; empty while it is called for and nobody has.</summary>
    public required string SampledBy { get; set; }
    public DateTimeOffset RegisteredAt { get; init; }
    public Guid RegisteredBy { get; init; }
    public DateTimeOffset? ReceivedAt { get; set; }
    public Guid? ReceivedBy { get; set; }

    /// <summary>What was decided where the condition at receipt departed from what was expected.</summary>
    public ReceiptVerdict Verdict { get; set; }
    public string? VerdictNote { get; set; }
    public Guid? VerdictBy { get; set; }
    public string? Note { get; set; }

    /// <summary>The sample that this one was drawn again for.</summary>
    public Guid? ResampleOf { get; init; }
    public Guid Version { get; set; }

    public List<Container> Containers { get; init; } = [];
    public List<AssignedTest> Tests { get; init; } = [];
}
