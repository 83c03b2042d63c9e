using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Batches;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Samples;

/// <summary>A blendstock and ethanol, made cold at the bench, judged as a state of its own.</summary>
public sealed class HandBlendTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Make_ByTheRecipe_IsASampleOfItsOwn(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var (batch, sample) = await Blendstock(lab);

        var blend = Done(await Make(lab, New(sample)));

        var sheet = (await new ReadSample(lab.Open, lab.Lab.Clock).Run(blend, Cancel))!;
        Assert.Equal((SampleState.Received, batch, 2), (sheet.Sample.State, sheet.Batch, sheet.Containers.Count));
        Assert.Equal([ScanCode.ForContainer(blend, 1), ScanCode.ForContainer(blend, 2)], sheet.Containers.Select(c => c.Container.Code));
        var recipe = (await new ReadHandBlends(lab.Open).Run(blend, Cancel))!.Recipe!;
        Assert.Equal((sample, 1, "E-26-07", "900", "100 mL", "0,5 °C"), (recipe.Blendstock, recipe.Container, recipe.EthanolLot, recipe.BlendstockVolume[..3], recipe.EthanolVolume, recipe.Temperature));
        Assert.Equal((10m, "100 · 100 / (900 + 100)", "Ida Berg"), (recipe.Nominal.Value, recipe.Nominal.Expression, recipe.MadeBy));
        var parent = (await new ReadHandBlends(lab.Open).Run(sample, Cancel))!;
        Assert.Equal((true, true), (parent.IsBlendstock, parent.MadeFromIt.SequenceEqual([blend])));
        Assert.Single((await new ReadSample(lab.Open, lab.Lab.Clock).Run(sample, Cancel))!.Containers[0].Container.Openings);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Make_SentTwice_MakesOne(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var (_, sample) = await Blendstock(lab);
        var request = New(sample);

        var first = Done(await Make(lab, request));
        var again = await Make(lab, request);

        Assert.Equal((AnswerKind.Repeated, first), (again.Kind, again.Value));
    }

    public static TheoryData<string, string, string> Departures => new()
    {
        { "warm", "/temperature", HandBlendRecipe.MadeCold },
        { "frozen", "/temperature", HandBlendRecipe.MadeCold },
        { "no temperature", "/temperature", "" },
        { "no blendstock", "/blendstockVolume", "" },
        { "no ethanol", "/ethanolVolume", "" },
        { "nothing of ethanol", "/ethanolVolume", "" },
        { "no lot", "/ethanolLot", "" },
        { "nothing to put it in", "/containers", "" },
        { "more than was made", "/containers", "" },
        { "more than the bottle holds", "/blendstockVolume", BlendstockFit.Rule },
        { "no such bottle", "/containerNumber", "" },
        { "a caution not confirmed", "/confirmed/F-24", HandlingConfirmed.Rule },
    };

    [Theory, MemberData(nameof(Departures))]
    public async Task Make_EachDeparture_IsRefusedAtItsField(string departure, string field, string rule)
    {
        await using var lab = await Create(StorageEngine.Sqlite);
        var (_, sample) = await Blendstock(lab);
        var good = New(sample);

        var answer = await Make(lab, departure switch
        {
            "warm" => good with { Temperature = "1.1" },
            "frozen" => good with { Temperature = "31 °F" },
            "no temperature" => good with { Temperature = " " },
            "no blendstock" => good with { BlendstockVolume = null },
            "no ethanol" => good with { EthanolVolume = null },
            "nothing of ethanol" => good with { EthanolVolume = "0" },
            "no lot" => good with { EthanolLot = "" },
            "nothing to put it in" => good with { Containers = [] },
            "more than was made" => good with { Containers = [.. Enumerable.Repeat(new ContainerRequest(ContainerKind.GlassBottle, 1000m, 75m), 2)] },
            "more than the bottle holds" => good with { BlendstockVolume = "951 mL" },
            "no such bottle" => good with { ContainerNumber = 9 },
            _ => good with { Confirmed = [.. good.Confirmed.Where(c => c.Code != "F-24")] },
        });

        Assert.True(answer.Problems.Any(p => p.Field == field && (p.Rule ?? "") == rule), $"{departure}: {answer.Kind}: {answer.Text}");
        Assert.Equal(0, await lab.Read(db => db.HandBlends.CountAsync(Cancel)));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Make_FromAnOpenedBottle_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var (_, sample) = await Blendstock(lab);
        await lab.Measure(sample, "60.0", method: Astm);

        Assert.Equal([BlendstockFit.Rule], Rules(await Make(lab, New(sample))));
        Done(await Make(lab, New(sample) with { ContainerNumber = 2 }));
        Assert.Equal([RetainedPortion.Rule], Rules(await Make(lab, New(sample) with { ContainerNumber = 3 })));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Make_FromWhatIsNoSoundBlendstock_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var (_, sample) = await Blendstock(lab);
        var finished = await lab.Sample(null, grade: European);
        var blend = Done(await Make(lab, New(sample)));
        Done(await lab.Move(lab.Chemist, lab.Now.AddMinutes(-10)));

        Assert.Contains("not a blendstock", (await Make(lab, New(finished))).Text, StringComparison.Ordinal);
        Assert.Contains("a hand blend itself", (await Make(lab, New(blend) with { BlendstockVolume = "300", EthanolVolume = "300" })).Text, StringComparison.Ordinal);
        Assert.Contains("void for a decision", (await Make(lab, New(sample) with { ContainerNumber = 2 })).Text, StringComparison.Ordinal);
        Assert.Equal(AnswerKind.NotFound, (await Make(lab, New("S-0"))).Kind);
        Assert.Equal(AnswerKind.Forbidden, (await new MakeHandBlend(lab.Open, lab.Lab.Clock).Run(lab.Engineer, New(sample), Cancel)).Kind);
    }

    // EPA: 0.956 · 9.60 − 0.347 = 8.8306 psi for the blendstock, against 9.0; 0.956 · 10.60 − 0.347 = 9.7866 psi for the
    // blend, which only the allowance of 1.0 psi for 9 to 10 % lets pass.
    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Assess_EachState_HasItsOwnLimit(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var (batch, sample) = await Blendstock(lab);
        await lab.Measure(sample, "9.60 psi", method: Astm);
        var blend = Done(await Make(lab, New(sample) with { ContainerNumber = 2 }));

        Assert.Equal(Outcome.Incomplete, Of(await lab.Assess(batch), blend).Outcome);
        await lab.Measure(blend, "10.60 psi", method: Astm);
        var unmeasured = Of(await lab.Assess(batch), blend);
        Assert.Equal((Outcome.DoesNotConform, null), (unmeasured.Outcome, unmeasured.Allowance));
        Assert.Contains("the ethanol content wasn't measured", unmeasured.Why, StringComparison.Ordinal);

        Assert.Equal(9.8m, Done(await new RecordBlendContent(lab.Open, lab.Lab.Clock).Run(lab.Analyst, new(Guid.NewGuid(), blend, "9,8", "infrared"), Cancel)));

        var assessed = await lab.Assess(batch);
        var allowed = Of(assessed, blend);
        Assert.Equal((Outcome.Conforms, 1.0m, 10.0m, 9.7866m, ProductState.HandBlend), (allowed.Outcome, allowed.Allowance, allowed.EffectiveMaximum, allowed.Value, allowed.State));
        var own = Assert.Single(assessed.Evidence.Limits, l => l.HandBlend is null);
        Assert.Equal((Outcome.Conforms, null, 8.8306m, ProductState.Blendstock), (own.Outcome, own.Allowance, own.Value, own.State));
        Assert.Equal(Outcome.Conforms, assessed.Evidence.Outcome);
        Assert.Equal(9.8m, assessed.Evidence.Samples.Single(s => s.Number == blend).HandBlend!.EthanolPercent);
        Assert.Empty(assessed.Evidence.Levels);
    }

    // What happens to the tank happens to what the blend stands for.
    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Assess_AfterAMovement_TheBlendIsVoidToo(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var (batch, sample) = await Blendstock(lab);
        Done(await Make(lab, New(sample)));
        Done(await lab.Move(lab.Chemist, lab.Now.AddMinutes(-10)));

        Assert.All((await lab.Assess(batch)).Evidence.Samples, s => Assert.NotNull(s.Void));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Content_MeasuredAgain_TheLatestCountsAndTheReleaseIsMarked(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var (batch, sample) = await Blendstock(lab);
        await lab.Measure(sample, "9.00 psi", method: Astm);
        var blend = Done(await Make(lab, New(sample) with { ContainerNumber = 2 }));
        await lab.Measure(blend, "9.00 psi", method: Astm);
        Done(await lab.Sign(lab.Chemist, batch));
        var record = new RecordBlendContent(lab.Open, lab.Lab.Clock);

        Done(await record.Run(lab.Analyst, new(Guid.NewGuid(), blend, "8.9", "infrared"), Cancel));
        lab.Lab.Clock.Advance(TimeSpan.FromMinutes(1));
        Done(await record.Run(lab.Analyst, new(Guid.NewGuid(), blend, "9.1", "infrared"), Cancel));

        var assessed = await lab.Assess(batch);
        Assert.Equal(9.1m, assessed.Evidence.Samples.Single(s => s.Number == blend).HandBlend!.EthanolPercent);
        Assert.NotEmpty(assessed.ReviewMarks);
        var wrong = await record.Run(lab.Analyst, new(Guid.NewGuid(), blend, "ten", " "), Cancel);
        Assert.Equal(["/ethanolPercent", "/method"], wrong.Problems.Select(p => p.Field));
        Assert.Equal(AnswerKind.NotFound, (await record.Run(lab.Analyst, new(Guid.NewGuid(), sample, "9.8", "infrared"), Cancel)).Kind);
    }

    private static Task<GasolineLab> Create(StorageEngine engine) => GasolineLab.Create(engine, grade =>
    {
        if (grade.Code == American)
            grade.State = ProductState.Blendstock;
    });

    // Bottles that hold 950 mL each: enough blendstock for a litre of blend.
    private static async Task<(string Batch, string Sample)> Blendstock(GasolineLab lab)
    {
        var batch = await lab.Batch(American, "US-9.0");
        var drawn = lab.NewSample(batch, grade: American);
        var sample = Done(await new RegisterSample(lab.Open, lab.Lab.Clock).Run(lab.Analyst, drawn with
        {
            Containers = [.. drawn.Containers.Select(c => c with { FillPercent = 80m, VolumeMillilitres = 1187.5m })],
        }, Cancel));
        return (batch, sample);
    }

    private static HandBlendRequest New(string sample) => new()
    {
        Blendstock = sample,
        ContainerNumber = 1,
        EthanolLot = "E-26-07",
        BlendstockVolume = "900",
        EthanolVolume = "100 mL",
        Temperature = "0,5",
        Containers = [.. Enumerable.Repeat(new ContainerRequest(ContainerKind.GlassBottle, 500m, 75m), 2)],
        Confirmed = [.. HandBlendRecipe.Cautions.Select(c => new ConfirmedStep(c.Code, DateTimeOffset.UnixEpoch))],
    };

    private static LimitEvidence Of(AssessBatch.Assessed assessed, string blend) =>
        Assert.Single(assessed.Evidence.Limits, l => l.HandBlend == blend && l.Quantity == "RVP");

    private static Task<Answer<string>> Make(GasolineLab lab, HandBlendRequest request) =>
        new MakeHandBlend(lab.Open, lab.Lab.Clock).Run(lab.Analyst, request, Cancel);
}
