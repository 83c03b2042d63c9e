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

    /// <summary>What is done when results don't settle the matter.</summary>
    public List<RetestRuleEntry> Tree { get; private init; } = RetestRuleEntry.Of(RetestTree.CommonPractice);

    public PartyRule PartyRule { get; set; } = PartyAgreement.Usual.Rule;

    /// <summary>P of ASTM D3244 as typed.</summary>
    public string? Probability { get; set; } = Rounding.Plain(PartyAgreement.Usual.Probability);

    public Comparison PartyComparison { get; set; } = PartyAgreement.Usual.Comparison;

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
            Tree = RetestRuleEntry.Of(grade.Tree),
            PartyRule = grade.Parties.Rule,
            Probability = Rounding.Plain(grade.Parties.Probability),
            PartyComparison = grade.Parties.Comparison,
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
        if (!QuantityText.TryReadNumber(Probability, 0m, 1m, out var probability, out var unread))
            found.Add(new Problem("/probability", unread!));
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
            Tree = new RetestTree([.. Tree.Select(r => r.Read())]),
            Parties = new PartyAgreement(PartyRule, probability, PartyComparison),
            Active = Active,
        };
    }
}
