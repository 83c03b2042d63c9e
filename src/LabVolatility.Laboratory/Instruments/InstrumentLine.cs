namespace LabVolatility.Laboratory.Instruments;

/// <summary>An instrument as it stands today.</summary>
/// <param name="Instrument">The instrument.</param>
/// <param name="Readiness">Ready or not, why, and what would make it ready.</param>
/// <param name="Last">Its newest verification, of whatever day.</param>
public sealed record InstrumentLine(Instrument Instrument, Readiness Readiness, Verification? Last)
{
    /// <summary>Reading less the middle of the band, in kPa; null where no reading or band was typed.</summary>
    public static decimal? DeviationKpa(Verification? check) =>
        check is { ReadingKpa: { } reading, BandLowKpa: { } low, BandHighKpa: { } high } ? reading - ((low + high) / 2m) : null;
}
