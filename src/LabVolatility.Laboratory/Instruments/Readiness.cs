namespace LabVolatility.Laboratory.Instruments;

/// <summary>Whether an instrument may be used on a day: the rule "ready instrument only".</summary>
/// <param name="Instrument">Its code.</param>
/// <param name="Ready">True when nothing stands against it.</param>
/// <param name="Reasons">What stands against it, in words; empty when ready.</param>
/// <param name="Remedies">What would make it ready.</param>
/// <param name="VerifiedAt">When the day's verification in force was made; null where there is none.</param>
public sealed record Readiness(
    string Instrument, bool Ready, IReadOnlyList<string> Reasons, IReadOnlyList<string> Remedies, DateTimeOffset? VerifiedAt)
{
    public const string Rule = "ready-instrument-only";

    /// <summary>The state for something measured at a moment: ready now, and by the verification that was in force then.</summary>
    /// <param name="instrument">The instrument.</param>
    /// <param name="verifications">Its verifications of that day, in any order.</param>
    /// <param name="day">The laboratory's local day of measuring.</param>
    /// <param name="measuredAt">The moment of measuring.</param>
    public static Readiness When(
        Instrument instrument, IReadOnlyList<Verification> verifications, DateOnly day, DateTimeOffset measuredAt)
    {
        var now = On(instrument, verifications, day);
        var before = verifications.Where(v => v.At <= measuredAt).ToList();
        return now.Ready && before.Count > 0 ? On(instrument, before, day) : now;
    }

    /// <summary>The day's state from what is recorded: in service, calibrated, and the day's verification in its band.</summary>
    /// <param name="instrument">The instrument.</param>
    /// <param name="verifications">Its verifications of that day, in any order.</param>
    /// <param name="day">The laboratory's local day.</param>
    public static Readiness On(Instrument instrument, IEnumerable<Verification> verifications, DateOnly day)
    {
        var reasons = new List<string>();
        var remedies = new List<string>();
        if (!instrument.InService)
        {
            reasons.Add($"Out of service: {instrument.OutOfServiceReason ?? "no reason recorded"}.");
            remedies.Add("The quality manager puts it back in service.");
        }

        if (instrument.CalibrationDueOn is null || instrument.CalibrationDueOn < day)
        {
            reasons.Add(instrument.CalibrationDueOn is { } due
                ? $"Calibration was due on {due:yyyy-MM-dd}."
                : "No calibration date is recorded.");
            remedies.Add("Record its calibration.");
        }

        var latest = verifications.Where(v => v.On == day).OrderBy(v => v.At).ThenBy(v => v.Id).LastOrDefault();
        if (latest is null)
        {
            reasons.Add($"No verification fluid was measured on {day:yyyy-MM-dd}.");
            remedies.Add("Measure the verification fluid and enter it.");
        }
        else if (!latest.InBand)
        {
            reasons.Add($"The verification fluid was outside its band on {day:yyyy-MM-dd} ({latest.Fluid}).");
            remedies.Add("Find the cause, then measure a fresh bottle of the verification fluid.");
        }

        return new Readiness(instrument.Code, reasons.Count == 0, reasons, remedies, latest?.At);
    }
}
