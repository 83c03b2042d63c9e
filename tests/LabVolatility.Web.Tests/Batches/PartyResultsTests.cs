using Bunit;
using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Batches;
using Xunit;

namespace LabVolatility.Web.Tests.Batches;

/// <summary>Another party's result stands beside ours in words, and only who decides enters or withdraws one.</summary>
public sealed class PartyResultsTests : BunitContext
{
    [Theory]
    [InlineData(true, "agrees")]
    [InlineData(false, "differs by more than allowed")]
    [InlineData(null, "can't be judged")]
    public void Party_HeldBesideOurs_SaysHowItStands(bool? agree, string words)
    {
        var list = Draw([Inspector(agree)], Sheets.Analyst);

        Assert.Contains(words, list.Markup, StringComparison.Ordinal);
        Assert.Contains("not our seal: B-2", list.Markup, StringComparison.Ordinal);
        Assert.Contains("from memory", list.Markup, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Party_Analyst_MayOnlyRead() => Assert.DoesNotContain(Draw([Inspector(true)], Sheets.Analyst).FindAll("button"), b => b.ClassList.Contains("act"));

    [Fact]
    public void Party_Difference_OpensItsArithmetic()
    {
        var list = Draw([Inspector(false)], Sheets.Analyst);

        list.Find("button.trail-open").Click();

        Assert.Contains("|58.9 − 62.5|", list.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void Withdrawal_AsksForTheReasonFirst()
    {
        (Guid Result, string? Reason) sent = default;
        var party = Inspector(false);
        var list = Draw([party], Sheets.Chemist, withdrawn: w => sent = w);

        list.FindAll("button.act.plain")[0].Click();
        list.Find($"#withdraw-{party.Id:N}").Change("of another tank");
        list.Find("button.grave").Click();

        Assert.Equal((party.Id, "of another tank"), sent);
    }

    [Fact]
    public void Withdrawn_ShowsWhyAndNoJudgement()
    {
        var list = Draw([Inspector(null) with { Comparison = null, Withdrawn = "withdrawn by Tomas Lind: of another tank" }], Sheets.Chemist);

        Assert.Contains("of another tank", list.Markup, StringComparison.Ordinal);
        Assert.DoesNotContain("can't be judged", list.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void Entry_WithUnreadableNumbers_IsNotSent()
    {
        var sent = 0;
        var list = Draw([], Sheets.Chemist, entered: _ => sent++);

        list.Find("#enter-party").Click();
        list.Find("#field-count").Change("two");
        list.Find("#field-measuredOn").Change("yesterday");
        list.Find("#party-form").Submit();

        Assert.Equal(0, sent);
        Assert.Contains("whole number", list.Markup, StringComparison.Ordinal);
        Assert.Contains("is no day", list.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void Entry_AsTyped_IsSentAsARequest()
    {
        PartyResultRequest? sent = null;
        var list = Draw([], Sheets.Chemist, entered: request => sent = request);

        list.Find("#enter-party").Click();
        list.Find("#field-party").Change("Fjord Inspection");
        list.Find("#field-laboratory").Change("Fjord laboratory");
        list.Find("#field-value").Change("61,2");
        list.Find("#field-measuredOn").Change("2026-05-04");
        list.Find("#field-seals").Change("A-17");
        list.Find("#party-form").Submit();

        Assert.Equal(("26-1042", "Fjord Inspection", "61,2", 1, "A-17"), (sent!.Batch, sent.Party, sent.Value, sent.Count, sent.Seals));
        Assert.Equal(new DateOnly(2026, 5, 4), sent.MeasuredOn);
        Assert.Null(sent.Sample);
    }

    private static PartyEvidence Inspector(bool? agree) => new()
    {
        Id = new Guid("00000000-0000-7000-8000-000000000077"),
        Kind = PartyKind.Inspector,
        Party = "Fjord Inspection",
        Laboratory = "Fjord laboratory",
        Quantity = "DVPE",
        Correlation = "EN 13016-1",
        Method = "EN 13016-1",
        Typed = "62.5",
        Unit = "kPa",
        Count = 1,
        Hazy = false,
        MeasuredOn = new DateOnly(2026, 5, 4),
        Seals = "B-2",
        SealMatch = SealMatch.NotOurs,
        EnteredBy = "Tomas Lind",
        EnteredAt = new DateTimeOffset(2026, 5, 4, 8, 0, 0, TimeSpan.Zero),
        Comparison = new PartyComparison
        {
            Agree = agree,
            Rule = PartyRule.Iso4259,
            Status = FactStatus.FromMemory,
            Ours = 58.9m,
            OurCount = 1,
            Theirs = 62.5m,
            Unit = "kPa",
            Difference = 3.6m,
            Why = "The means differ by 3.60 kPa.",
            Next = "",
            Arithmetic = [new ArithmeticStep("Difference of the means", "|58.9 − 62.5|", 3.6m, "kPa", "ISO 4259-2")],
        },
    };

    private IRenderedComponent<PartyResults> Draw(
        IReadOnlyList<PartyEvidence> parties, Actor actor, Action<PartyResultRequest>? entered = null,
        Action<(Guid Result, string? Reason)>? withdrawn = null) => Render<PartyResults>(p => p
            .Add(r => r.Evidence, Sheets.Of().Evidence with { Parties = parties })
            .Add(r => r.Actor, actor)
            .Add(r => r.Entered, entered ?? (_ => { }))
            .Add(r => r.Withdrawn, withdrawn ?? (_ => { })));
}
