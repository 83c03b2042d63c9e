using System.Globalization;
using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Web.Setup;

/// <summary>A grade as typed.</summary>
public sealed class GradeEntry
{
    private const string UsualConfidence = "0.95";
    private const string UsualResults = "10";

    public string? Code { get; set; }

    public string? Name { get; set; }

    public SampleKind Kind { get; set; }

    public ProductState State { get; set; }

    public List<GradeTestEntry> Tests { get; } = [];

    public DecisionRule Rule { get; set; }

    public string? Confidence { get; set; } = UsualConfidence;

    public string? ResultsInAll { get; set; } = UsualResults;

    public bool Active { get; set; } = true;

    public Guid Version { get; set; }

    public static GradeEntry Of(Grade grade)
    {
        var entry = new GradeEntry
        {
            Code = grade.Code,
            Name = grade.Name,
            Kind = grade.Kind,
            State = grade.State,
            Rule = grade.Rule,
            Confidence = Rounding.Plain(grade.Confidence),
            ResultsInAll = grade.ResultsInAll.ToString(CultureInfo.InvariantCulture),
            Active = grade.Active,
            Version = grade.Version,
        };
        entry.Tests.AddRange(grade.Tests.Select(GradeTestEntry.Of));
        return entry;
    }

    /// <summary>The grade wanted, or what can't be read of it.</summary>
    public Grade? Read(out IReadOnlyList<Problem> problems)
    {
        var found = new List<Problem>();
        if (!QuantityText.TryReadNumber(Confidence, 0m, 1m, out var confidence, out var problem))
            found.Add(new Problem("/confidence", problem!));
        if (!int.TryParse(ResultsInAll?.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var results))
            found.Add(new Problem("/resultsInAll", "Give a whole number, for example 10."));
        problems = found;
        return found.Count > 0 ? null : new Grade
        {
            Code = (Code ?? "").Trim(),
            Name = Name ?? "",
            Kind = Kind,
            State = State,
            Tests = [.. Tests.Select(t => t.Read())],
            Rule = Rule,
            Confidence = confidence,
            ResultsInAll = results,
            Active = Active,
        };
    }
}
