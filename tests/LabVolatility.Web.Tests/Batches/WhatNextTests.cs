using Bunit;
using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Batches;
using LabVolatility.Web.Layout;
using LabVolatility.Web.Tests.Setup;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace LabVolatility.Web.Tests.Batches;

/// <summary>One sentence, one button and why: for those who may take the step.</summary>
public sealed class WhatNextTests : BunitContext
{
    private static readonly RetestAdvice Third = new()
    {
        Occasion = RetestOccasion.DuplicatesDiffer,
        Subject = "S2600417B",
        Found = "The two results differ by 2.1; r is 0.8.",
        Words = "Open container 3 of sample S2600417B (step 1 of 3).",
        Kind = RetestKind.MoreContainers,
        Place = 1,
        Branch = [new(RetestKind.MoreContainers, 1, 1), new(RetestKind.MoreContainers, 1, 1), new(RetestKind.HoldAndCall)],
        Status = FactStatus.CommonPractice,
    };

    [Fact]
    public void NothingFoundOrTaken_DrawsNothing() => Assert.Empty(Draw(null, Sheets.Chemist).Markup.Trim());

    [Fact]
    public void StepToTake_ShiftChemist_SeesSentenceWhyAndButton()
    {
        var block = Draw(Third, Sheets.Chemist);

        Assert.Equal(Third.Words, block.Find("#next-step").TextContent.Trim());
        Assert.Contains(Third.Found, block.Markup, StringComparison.Ordinal);
        Assert.Contains("common practice", block.Markup, StringComparison.OrdinalIgnoreCase);
        Assert.Equal("Take the step: test 1 more sealed container", block.Find("#take-step").TextContent.Trim());
    }

    [Fact]
    public void StepTaken_SendsWhatWasSeenWithItsReason()
    {
        TakeStepRequest? sent = null;
        var block = Draw(Third, Sheets.Chemist, taken: request => sent = request);

        block.Find("#step-reason").Change("both bottles looked at again");
        block.Find("#take-step").Click();

        Assert.Equal(("26-1042", RetestOccasion.DuplicatesDiffer, "S2600417B", 1), (sent!.Batch, sent.Occasion, sent.Subject, sent.Place));
        Assert.Equal("both bottles looked at again", sent.Reason);
    }

    [Fact]
    public void StepToTake_Reason_BeginsWithWhatWasFound() =>
        Assert.Equal(Third.Found, Draw(Third, Sheets.Chemist).Find("#step-reason").GetAttribute("value"));

    [Fact]
    public void StepToTake_Analyst_SeesItWithoutAButton() => Assert.Empty(Draw(Third, Sheets.Analyst).FindAll("button"));

    [Fact]
    public void StepUnderWay_OffersNoButton() =>
        Assert.Empty(Draw(Third with { Kind = null, Words = "Waits at the bench." }, Sheets.Chemist).FindAll("button"));

    [Fact]
    public void TreeAtItsEnd_AsksForTheHold()
    {
        RetestAdvice? asked = null;
        var end = Third with { Kind = RetestKind.HoldAndCall, Place = 3, Words = "Hold the batch and call the quality manager (step 3 of 3)." };
        var block = Draw(end, Sheets.Chemist, hold: advice => asked = advice);

        block.Find("#take-hold").Click();

        Assert.Same(end, asked);
        Assert.Empty(block.FindAll("#take-step"));
    }

    [Fact]
    public async Task StepsTaken_AreListedWithWhoAndWhy()
    {
        await using var host = await LabHost.StartAsync();
        Services.AddSingleton(host.Services.GetRequiredService<LabClock>());
        var step = new StepEvidence(
            RetestOccasion.DuplicatesDiffer, "S2600417B", 1, Third.Branch, RetestKind.MoreContainers, Guid.NewGuid(), 3, ["S2600417B"],
            Third.Found, "as the tree says", "Tomas Lind", new DateTimeOffset(2026, 5, 4, 8, 0, 0, TimeSpan.Zero));

        var block = Draw(null, Sheets.Chemist, steps: [step]);

        Assert.Contains("step 1 of 3", block.Find("#steps-taken").TextContent, StringComparison.Ordinal);
        Assert.Contains("Tomas Lind", block.Find("#steps-taken").TextContent, StringComparison.Ordinal);
        Assert.Contains("as the tree says", block.Find("#steps-taken").TextContent, StringComparison.Ordinal);
    }

    private IRenderedComponent<WhatNext> Draw(
        RetestAdvice? next, Actor actor, IReadOnlyList<StepEvidence>? steps = null, Action<TakeStepRequest>? taken = null, Action<RetestAdvice>? hold = null)
    {
        var sheet = Sheets.Of() with { Next = next };
        var evidence = sheet.Evidence with { Steps = steps ?? [] };
        return Render<WhatNext>(p => p
            .Add(w => w.Sheet, sheet with { Assessed = sheet.Assessed with { Evidence = evidence } })
            .Add(w => w.Actor, actor)
            .Add(w => w.Taken, taken ?? (_ => { }))
            .Add(w => w.HoldAsked, hold ?? (_ => { })));
    }
}
