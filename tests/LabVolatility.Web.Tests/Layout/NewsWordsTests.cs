using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Layout;
using Xunit;

namespace LabVolatility.Web.Tests.Layout;

public sealed class NewsWordsTests
{
    private static readonly NamedThing Batch = new("batch", "1", "26-1042");
    private static readonly NamedThing Sample = new("sample", "2", "S2605-0012");
    private static readonly NamedThing Instrument = new("instrument", "VP-1", "VP-1");

    public static TheoryData<string, NamedThing[], NamedThing[], string> Acts => new()
    {
        { "release", [new("decision", "9"), new("frozen assessment", "8")], [Batch], "Kola Adeyemi released batch 26-1042" },
        { "release under concession", [new("decision", "9")], [Batch], "Kola Adeyemi released under concession, batch 26-1042" },
        { "hold", [new("decision", "9")], [Batch], "Kola Adeyemi held batch 26-1042" },
        { "withdraw decision", [new("decision", "9")], [Batch], "Kola Adeyemi withdrew decision, batch 26-1042" },
        { "report determination", [new("determination", "9"), new("result", "8")], [Sample, Batch, Instrument], "Kola Adeyemi reported determination, sample S2605-0012" },
        { "receive sample", [Sample], [Batch], "Kola Adeyemi received sample S2605-0012" },
        { "record verification", [new("verification", "9")], [Instrument], "Kola Adeyemi recorded verification, instrument VP-1" },
        { "take instrument out of service", [Instrument], [], "Kola Adeyemi took instrument out of service, instrument VP-1" },
        { "record tank movement", [new("tank movement", "9")], [new("tank", "T-101", "T-101")], "Kola Adeyemi recorded tank movement, tank T-101" },
        { "approve precision", [new("precision entry", "9"), new("review mark", "8")], [Batch], "Kola Adeyemi approved precision" },
        { "change settings", [new("laboratory settings", "1")], [], "Kola Adeyemi changed settings" },
    };

    [Theory, MemberData(nameof(Acts))]
    public void NewsWords_OfAnAct_SayWhoDidWhatToWhat(string act, NamedThing[] changed, NamedThing[] belongsTo, string expected) =>
        Assert.Equal(expected, NewsWords.Of(new Notice { Who = "Kola Adeyemi", Act = act, Changed = changed, BelongsTo = belongsTo }));
}
