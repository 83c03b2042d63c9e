using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Web.Methods;

/// <summary>An own correlation as typed: DVPE = a · Ptot + b · Pgas + c.</summary>
public sealed class CorrelationDraft
{
    private const decimal WidestSlope = 10m;
    private const decimal WidestConstant = 3500m;

    public string? TotalSlope { get; set; }

    public string? GasSlope { get; set; }

    public string? Constant { get; set; }

    public DateOnly? From { get; set; }

    public DateOnly? Until { get; set; }

    public string? Source { get; set; }

    /// <summary>The entry, or what can't be read of it.</summary>
    public CorrelationEntry? Read(TestMethod method, out IReadOnlyList<Problem> problems)
    {
        var found = new List<Problem>();
        var entry = new CorrelationEntry
        {
            Method = method.Designation,
            TotalSlope = Number(TotalSlope, "/a", WidestSlope, found),
            GasSlope = Number(GasSlope, "/b", WidestSlope, found),
            Constant = Number(Constant, "/c", WidestConstant, found),
            Unit = PressureUnit.Kilopascal,
            From = From ?? default,
            Until = Until,
            Source = Source ?? "",
        };
        if (From is null)
            found.Add(new Problem("/from", "From which day of measuring is it for?"));
        problems = found;
        return found.Count > 0 ? null : entry;
    }

    private static decimal Number(string? text, string field, decimal widest, List<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(text))
            problems.Add(new Problem(field, "Type the number; 0 where the correlation hasn't this term."));
        else if (QuantityText.TryReadNumber(text, -widest, widest, out var value, out var problem))
            return value;
        else
            problems.Add(new Problem(field, problem!));
        return 0m;
    }
}
