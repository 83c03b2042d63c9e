using LabVolatility.Core.Limits;

namespace LabVolatility.Web.Api.Assessment;

/// <summary>The two forms of the question: against a bare limit, and against the catalogue.</summary>
internal static class ConformityShape
{
    private static readonly string[] OfBareOnly = ["value", "maximum", "minimum", "digits", "comparison", "count"];

    private static readonly string[] OfCatalogueOnly = ["grade", "area", "results"];

    private static readonly WordShape Rule = new([.. DecisionRules.All.Select(r => r.Text())]) { About = "Default simple." };

    private static readonly NumberShape Confidence = new(Low: 0.5m, High: 0.999999999m) { About = "One-sided, of a guarded verdict; default 0.95." };

    public static ObjectShape Bare { get; } = new("BareLimitRequest",
        new Member("value", new LimitNumberShape(), true),
        new Member("maximum", new LimitNumberShape()),
        new Member("minimum", new LimitNumberShape()),
        new Member("reproducibility", new LimitNumberShape { Positive = true }),
        new Member("repeatability", new LimitNumberShape { Positive = true }),
        new Member("count", new NumberShape(Low: 1, High: 1_000_000, Whole: true) { About = "Results that make the value; default 1." }),
        new Member("rule", Rule),
        new Member("comparison", new WordShape([.. Comparisons.All.Select(c => c.Text())]) { About = "Default rounding." }),
        new Member("confidence", Confidence),
        new Member("digits", new NumberShape(Low: -6, High: 15, Whole: true) { About = "Decimals of the limit; default: as many as it is written with." }));

    private static readonly ObjectShape Result = new("OfferedResult",
        new Member("quantity", new TextShape(20), true),
        new Member("value", new LimitNumberShape(), true),
        new Member("method", new TextShape(40) { About = "Designation without edition; needed for pressures." }),
        new Member("correlation", new WordShape(CorrelationWords.All) { About = "Default: EPA for RVP, else the method's own." }),
        new Member("container", SampleShape.Container with { About = "Picks the precision that the laboratory entered for it." }),
        new Member("containerVolume", QuantityShape.Volume with { About = "Picks the precision that the laboratory entered for it." }));

    public static ObjectShape Catalogue { get; } = new("CatalogueRequest",
        new Member("grade", new TextShape(40) { About = "What it is, as gasoline, or a grade of the laboratory." }, true),
        new Member("state", new WordShape([.. ProductStates.All.Select(s => s.Text())]) { About = "Default finished." }),
        new Member("area", new TextShape(40), true),
        new Member("pointOfCompliance", new WordShape([.. PointsOfCompliance.All.Select(p => p.Text())]) { About = "Needed where the area tells them apart." }),
        new Member("date", new DateShape { About = "A local date of the area." }, true),
        new Member("ethanolPercent", new NumberShape(Low: 0, High: 100) { About = "Measured, % (V/V); null: not measured." }),
        new Member("results", new ListShape(Result), true),
        new Member("rule", Rule),
        new Member("confidence", Confidence));

    public static ObjectShape For(Given body) =>
        OfBareOnly.Any(body.Has) && !OfCatalogueOnly.Any(body.Has)
            ? Bare
            : Catalogue;
}
