namespace LabVolatility.Laboratory.Instruments;

/// <summary>One instrument with its verifications, the newest first.</summary>
/// <param name="Line">As it stands today.</param>
/// <param name="Verifications">At most <see cref="ReadInstrument.Shown"/>.</param>
/// <param name="Names">Who entered them.</param>
/// <param name="MeasuredToday">Determinations made on it today: what a failed verification would touch.</param>
public sealed record InstrumentSheet(
    InstrumentLine Line, IReadOnlyList<Verification> Verifications, IReadOnlyDictionary<Guid, string> Names, int MeasuredToday);
