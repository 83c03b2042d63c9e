using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Samples;

/// <summary>A test that a sample waits for or has had.</summary>
public sealed class AssignedTest : IRecorded
{
    public Guid Id { get; init; }
    public Guid SampleId { get; init; }
    public required string Method { get; init; }
    public IReadOnlyList<Authority> Authorities { get; init; } = [];

    /// <summary>How many determinations are asked for: 1, 2 with a duplicate, more once duplicates disagree.</summary>
    public int Wanted { get; set; } = 1;
    public DateTimeOffset? DueAt { get; set; }
    public TestState State { get; set; }
    public string? Why { get; set; }
    public Guid Version { get; set; }
}
