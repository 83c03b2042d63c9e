using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Batches;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Samples;

public sealed class RetestTreeTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public void CommonPractice_EveryOccasion_EndsWithTheHold() =>
        Assert.All(Enum.GetValues<RetestOccasion>(), o => Assert.Equal(RetestKind.HoldAndCall, RetestTree.CommonPractice.For(o).Places[^1].Kind));

    [Fact]
    public void CommonPractice_IsWithoutFault() => Assert.Empty(RetestProblems.Of(RetestTree.CommonPractice));

    [Fact]
    public void Places_StepTakenTwice_StandsThereTwice() =>
        Assert.Equal(3, RetestTree.CommonPractice.For(RetestOccasion.DuplicatesDiffer).Places.Count);

    [Fact]
    public void For_OccasionWithoutARule_IsAHold() =>
        Assert.Equal(RetestKind.HoldAndCall, Assert.Single(new RetestTree([]).For(RetestOccasion.NotDecided).Places).Kind);

    public static TheoryData<string, RetestRule> Faults => new()
    {
        { "/tree/0", new(RetestOccasion.NotDecided, [new(RetestKind.MoreContainers, 1, 1)]) },
        { "/tree/0", new(RetestOccasion.NotDecided, [new(RetestKind.HoldAndCall), new(RetestKind.Resample), new(RetestKind.HoldAndCall)]) },
        { "/tree/0/0/times", new(RetestOccasion.NotDecided, [new(RetestKind.Resample, 10), new(RetestKind.HoldAndCall)]) },
        { "/tree/0/0/containers", new(RetestOccasion.NotDecided, [new(RetestKind.MoreContainers, 1, 0), new(RetestKind.HoldAndCall)]) },
        { "/tree/0/0", new(RetestOccasion.SampleVoid, [new(RetestKind.MoreContainers, 1, 1), new(RetestKind.HoldAndCall)]) },
    };

    [Theory, MemberData(nameof(Faults))]
    public void Tree_WithAFault_IsRefusedBesideItsField(string field, RetestRule rule) =>
        Assert.Equal(field, Assert.Single(RetestProblems.Of(new RetestTree([rule]))).Field);

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Tree_KeptWithTheGrade_ComesBackAsItWas(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var usual = await Read(lab, European);
        usual.Tree = new RetestTree([new(RetestOccasion.DoesNotConform, [new(RetestKind.MoreContainers, 2, 3), new(RetestKind.HoldAndCall)])]);
        var status = (await Read(lab, European)).Tree.Status;

        Done(await new KeepGrade(lab.Open, lab.Lab.Clock).Change(lab.Manager, usual.Version, usual, Cancel));

        var kept = (await Read(lab, European)).Tree;
        Assert.Equal((FactStatus.CommonPractice, FactStatus.Laboratory), (status, kept.Status));
        Assert.Equal(new RetestStep(RetestKind.MoreContainers, 2, 3), kept.For(RetestOccasion.DoesNotConform).Steps[0]);
    }

    private static Task<Grade> Read(GasolineLab lab, string code) =>
        lab.Read(c => c.Grades.AsNoTracking().FirstAsync(g => g.Code == code, Cancel));
}
