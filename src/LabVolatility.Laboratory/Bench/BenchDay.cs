using LabVolatility.Laboratory.Instruments;

namespace LabVolatility.Laboratory.Bench;

/// <summary>What waits at the bench, the earliest deadline first.</summary>
/// <param name="Waiting">Tests of received samples.</param>
/// <param name="TakeOn">Determinations without an operator.</param>
/// <param name="Instruments">As they stand today.</param>
public sealed record BenchDay(
    IReadOnlyList<WaitingTest> Waiting, IReadOnlyList<WaitingForPerson> TakeOn, IReadOnlyList<InstrumentLine> Instruments);
