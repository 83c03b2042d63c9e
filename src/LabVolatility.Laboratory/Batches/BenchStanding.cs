using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Batches;

/// <summary>How a test of one of the batch's samples stands at the bench.</summary>
/// <param name="Sample">The sample's number.</param>
/// <param name="TestId">The assigned test.</param>
/// <param name="Method">Its method.</param>
/// <param name="State">Whether it waits.</param>
/// <param name="Counting">Results that count.</param>
/// <param name="Wanted">Results asked for in all.</param>
/// <param name="Offered">Sealed containers that may be opened, the retained portion left out.</param>
/// <param name="Settled">False while its results differ by more than the precision.</param>
/// <param name="Most">Results in all once they differ.</param>
/// <param name="Next">The number of the container that would be opened; null where none is left.</param>
public sealed record BenchStanding(
    string Sample, Guid TestId, string Method, TestState State, int Counting, int Wanted, int Offered, bool Settled, int Most, int? Next);
