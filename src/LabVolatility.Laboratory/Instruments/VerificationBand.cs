using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Instruments;

/// <summary>Reads a verification as typed and judges it against its band, both ends included.</summary>
internal static class VerificationBand
{
    public static (decimal? Reading, decimal? Low, decimal? High, bool InBand) Read(RecordVerification.Request request, List<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(request.Fluid))
            problems.Add(new Problem("/fluid", "Which verification fluid?"));
        var reading = Kpa(request.Reading, "/reading", problems);
        var low = Kpa(request.BandLow, "/bandLow", problems);
        var high = Kpa(request.BandHigh, "/bandHigh", problems);
        if (low > high)
            problems.Add(new Problem("/bandHigh", "The band's upper end is below its lower end."));
        if ((low is null) != (high is null))
            problems.Add(new Problem(low is null ? "/bandLow" : "/bandHigh", "A band has two ends."));
        if (low is not null && high is not null)
        {
            if (reading is null)
                problems.Add(new Problem("/reading", "Type the reading, so that it can be held against the band."));
            return (reading, low, high, reading >= low && reading <= high);
        }

        if (request.InBand is null)
            problems.Add(new Problem("/inBand", "Say whether it was in its band, or type the band."));
        return (reading, null, null, request.InBand == true);
    }

    private static decimal? Kpa(string? typed, string field, List<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(typed))
            return null;
        if (QuantityText.TryReadPressure(typed, PressureUnit.Kilopascal, out var pressure, out var problem))
            return pressure.In(PressureUnit.Kilopascal);
        problems.Add(new Problem(field, problem!));
        return null;
    }
}
