using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Certificates.Documents;

namespace LabVolatility.Laboratory.Certificates;

/// <summary>From a batch's frozen evidence to its tank's line on a cargo certificate.</summary>
internal static class CargoTankText
{
    /// <returns>Null where no value stands against a limit.</returns>
    public static CargoTankLine? Of(string tank, Evidence evidence, Decision decision)
    {
        if (BindingLimit.Of(evidence) is not { Value: { } value } limit || !PressureUnits.TryParse(limit.Unit, out var unit))
            return null;
        var used = CertificateLimits.Used(evidence, limit);
        if (used.Count == 0)
            return null;
        var first = used[0];
        return new CargoTankLine
        {
            Tank = tank,
            Batch = evidence.Batch,
            Grade = evidence.GradeName,
            Volume = CertificateText.Volume(evidence),
            Decision = DecisionWords.State(decision.Kind),
            DecidedBy = decision.PersonName,
            DecidedAt = decision.At,
            Quantity = limit.Quantity,
            Reported = Rounding.Text(value, PressureResolution.Places(unit)),
            Suffix = used.Any(u => u.Result.Suffix.Length > 0) ? "H" : "",
            Unit = limit.Unit,
            Method = CertificateText.Method(first.Determination),
            Correlation = first.Result.Correlation == "" ? null : first.Result.CorrelationVersion,
            Samples = [.. used.Select(u => u.Sample).DistinctBy(s => s.Number).Select(s => new CargoSampleLine(s.Number, s.Level.ToString().ToLowerInvariant(), s.SampledAt))],
            MeasuredAt = used.Max(u => u.Determination.MeasuredAt),
            Limits = CertificateLimits.Of(evidence),
            Concession = decision.Kind == DecisionKind.Concession ? CertificateText.Concession(evidence, decision) : null,
        };
    }
}
