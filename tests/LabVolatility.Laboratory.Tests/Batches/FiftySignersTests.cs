using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Batches;

/// <summary>Fifty people decide on one batch at once: one wins, everybody else is told by whom and what.</summary>
public sealed class FiftySignersTests
{
    private const int People = 50;
    private const int Rounds = 200;

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Decide_FiftyAtOnce_OneWinsEachRound(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var signers = await Signers(lab);
        for (var round = 0; round < Rounds; round++)
        {
            var batch = await lab.Batch();
            var hash = (await lab.Assess(batch)).EvidenceHash;
            var signing = signers.Select((signer, i) => AtOnce(() => lab.Sign(signer, new DecisionRequest(
                Guid.NewGuid(), batch, i % 2 == 0 ? DecisionKind.Hold : DecisionKind.Reject, 0, hash, "all at once", "password")))).ToList();

            var answers = await Task.WhenAll(signing);

            var won = Assert.Single(answers, a => a.Kind == AnswerKind.Done).Value!;
            var beaten = answers.Where(a => a.Kind != AnswerKind.Done).ToList();
            Assert.Equal(People - 1, beaten.Count);
            Assert.All(beaten, a => Assert.Equal(
                (AnswerKind.Conflict, won.Id, won.PersonId, won.Kind), (a.Kind, a.Value!.Id, a.Value.PersonId, a.Value.Kind)));
            Assert.All(beaten, a => Assert.StartsWith($"{won.PersonName} was first", a.Text, StringComparison.Ordinal));
        }

        Assert.Equal(Rounds, await lab.Read(c => c.Decisions.CountAsync(TestContext.Current.CancellationToken)));
    }

    private static async Task<IReadOnlyList<Actor>> Signers(GasolineLab lab)
    {
        var signers = new List<Actor>();
        for (var i = 0; i < People; i++)
            signers.Add(await lab.Lab.AddActor($"Signer {i}", Roles.ShiftChemist));
        return signers;
    }
}
