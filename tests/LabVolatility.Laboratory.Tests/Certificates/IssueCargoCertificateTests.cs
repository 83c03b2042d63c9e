using System.Security.Cryptography;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Certificates;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Batches;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Certificates;

/// <summary>Cargo certificates: which batches, who signs, what a number and a revision are.</summary>
public sealed class IssueCargoCertificateTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Issue_TwoTanks_KeepsTheirValuesApart(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var (first, second) = await CargoLab.TwoReleased(lab);

        var issued = await CargoLab.Issued(lab, first, second);

        var sheet = await CargoLab.Read(lab, issued.Number);
        Assert.Equal(
            [("T-101", first, "58.9", "58.9"), ("T-102", second, "55.1", "55.1")],
            sheet.Content.Tanks.Select(t => (t.Tank, t.Batch, t.Reported, t.Limits[^1].Compared!)));
        Assert.All(sheet.Content.Tanks, t => Assert.Equal(("EN 13016-1:2024", "kPa", "released"), (t.Method, t.Unit, t.Decision)));
        Assert.Empty(sheet.Lost);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Issue_Done_LeavesItsBytesItsHashAndARecord(StorageEngine engine)
    {
        await using var lab = await Create(engine);

        var issued = await CargoLab.Issued(lab, await CargoLab.Released(lab));

        var document = (await new ReadCertificates(lab.Open).ByNumber(issued.Number, null, Cancel))!;
        Assert.Equal(Convert.ToHexString(SHA256.HashData(document.Pdf)), document.Sha256);
        var records = await lab.Read(context => context.AuditRecords.Where(r => r.Action == "issue cargo certificate").Select(r => r.Subject).ToListAsync(Cancel));
        Assert.Equal(["cargo", "cargo tank", "certificate"], records.Order());
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Issue_BesideCertificatesOfBatches_SharesTheirNumbers(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await CargoLab.Released(lab);

        var ofBatch = Done(await new IssueCertificate(lab.Open, lab.Lab.Clock).Run(lab.Chemist, batch, Cancel));
        var ofCargo = await CargoLab.Issued(lab, batch);

        Assert.Equal(("C2600001", "C2600002"), (ofBatch.Number, ofCargo.Number));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Issue_SameCommandTwice_IssuesOnce(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var request = await CargoLab.Request(lab, await CargoLab.Released(lab));
        var first = Done(await CargoLab.Issue(lab, lab.Chemist, request));

        var again = await CargoLab.Issue(lab, lab.Chemist, request);

        Assert.Equal((AnswerKind.Repeated, first), (again.Kind, again.Value));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Issue_BatchWithoutARelease_IsRefusedBesideItsField(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var released = await CargoLab.Released(lab);
        var held = await lab.MeasuredBatch(change: r => r with { Tank = "T-102" });
        Done(await lab.Sign(lab.Chemist, held, DecisionKind.Hold));

        var answer = await CargoLab.Issue(lab, lab.Chemist, await CargoLab.Request(lab, released, held));

        var problem = Assert.Single(answer.Problems);
        Assert.Equal((AnswerKind.Refused, "/tanks/1/batch", CargoRules.Releases), (answer.Kind, problem.Field, problem.Rule));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Issue_ReleaseMarkedForReview_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.Batch();
        var measured = await lab.Measure(await lab.Sample(batch), "65.0");
        Done(await lab.Sign(lab.Chemist, batch));
        var request = await CargoLab.Request(lab, batch);
        Done(await lab.Amend(lab.Manager, measured, "65.4"));

        var answer = await CargoLab.Issue(lab, lab.Chemist, request);

        Assert.Equal((AnswerKind.Refused, CargoRules.Releases), (answer.Kind, Assert.Single(Rules(answer))));
        Assert.Contains("marked for review", answer.Text, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Issue_DecidedAnewSinceTheLook_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await CargoLab.Released(lab);
        var request = await CargoLab.Request(lab, batch);
        Done(await lab.Sign(lab.Chemist, batch, DecisionKind.Withdraw));
        Done(await lab.Sign(lab.Chemist, batch));

        var answer = await CargoLab.Issue(lab, lab.Chemist, request);

        Assert.Equal((AnswerKind.Refused, CargoRules.AsSeen), (answer.Kind, Assert.Single(Rules(answer))));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Issue_ByWhoMeasuredOneOfTheBatches_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var released = await CargoLab.Released(lab);
        var own = await lab.Batch(change: r => r with { Tank = "T-102" });
        await lab.Measure(await lab.Sample(own), "61.0", by: lab.Chemist);
        Done(await lab.Sign(lab.Manager, own));
        var request = await CargoLab.Request(lab, released, own);

        var measurer = await CargoLab.Issue(lab, lab.Chemist, request);
        var other = await CargoLab.Issue(lab, lab.Manager, request);

        Assert.Equal((AnswerKind.Refused, SecondPersonSigns.Rule), (measurer.Kind, Assert.Single(Rules(measurer))));
        Assert.Equal("/tanks/1/batch", Assert.Single(measurer.Problems).Field);
        Assert.Equal(AnswerKind.Done, other.Kind);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Issue_WithoutTheRight_IsForbidden(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var request = await CargoLab.Request(lab, await CargoLab.Released(lab));

        foreach (var person in lab.People.Where(p => p != lab.Chemist && p != lab.Manager && p != lab.SecondManager).Append(lab.Key).Append(lab.Manager with { IsKey = true }))
            Assert.Equal(AnswerKind.Forbidden, (await CargoLab.Issue(lab, person, request)).Kind);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Issue_WrongPassword_SignsNothing(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var request = await CargoLab.Request(lab, await CargoLab.Released(lab));

        var answer = await CargoLab.Issue(lab, lab.Chemist, request with { Password = "wrong" });

        Assert.Equal((AnswerKind.Refused, ISignature.Rule), (answer.Kind, Assert.Single(Rules(answer))));
        Assert.Empty((await new ReadCargoes(lab.Open).Run(null, null, Cancel)).Lines);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Issue_UnlikeGrades_AreSaidOrRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var one = await CargoLab.Released(lab);
        var other = await lab.MeasuredBatch("62.0", American, "US-9.0", r => r with { Tank = "T-102" });
        Done(await lab.Sign(lab.Chemist, other));
        var request = await CargoLab.Request(lab, one, other);

        var silent = await CargoLab.Issue(lab, lab.Chemist, request);
        var said = await CargoLab.Issue(lab, lab.Chemist, request with { WhyGradesDiffer = "Loaded into separate tanks of the ship." });

        Assert.Equal((AnswerKind.Refused, CargoRules.OneGrade), (silent.Kind, Assert.Single(Rules(silent))));
        Assert.Equal("Loaded into separate tanks of the ship.", (await CargoLab.Read(lab, Done(said).Number)).Content.WhyGradesDiffer);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Issue_FieldsMissing_AreNamedAllAtOnce(StorageEngine engine)
    {
        await using var lab = await Create(engine);

        var answer = await CargoLab.Issue(lab, lab.Chemist, new CargoRequest { CommandId = Guid.NewGuid(), Tanks = [], Password = "password" });

        Assert.Equal(AnswerKind.Invalid, answer.Kind);
        Assert.Equal(["/ship", "/voyage", "/port", "/product", ""], answer.Problems.Select(p => p.Field));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Issue_TankNamedTwice_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var (first, second) = await CargoLab.TwoReleased(lab);
        var request = await CargoLab.Request(lab, first, second);

        var answer = await CargoLab.Issue(lab, lab.Chemist, request with { Tanks = [request.Tanks[0], request.Tanks[1] with { Tank = "T-101" }] });

        Assert.Equal("/tanks/1/tank", Assert.Single(answer.Problems).Field);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Issue_Concession_IsNamedOnItsTank(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.OwnLimit("contract 7", "EN228-A", maximum: 58.0m);
        var batch = await lab.MeasuredBatch();
        Done(await lab.Sign(lab.Manager, batch, DecisionKind.Concession, "the customer accepts 59.0 kPa"));

        var issued = await CargoLab.Issued(lab, batch);

        var tank = Assert.Single((await CargoLab.Read(lab, issued.Number)).Content.Tanks);
        Assert.Equal(("released under concession", "the customer accepts 59.0 kPa"), (tank.Decision, tank.Concession!.Text));
        Assert.Equal("released under concession", (await CargoLab.Check(lab, issued.CheckCode)).Decision);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Revision_NamesWhatItReplaces(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var (first, second) = await CargoLab.TwoReleased(lab);
        var issued = await CargoLab.Issued(lab, first);
        var request = (await CargoLab.Request(lab, first, second)) with { Replaces = issued.Number, ReplacesRevision = 1, ReplacesWhy = "tank T-102 was added" };

        var revised = Done(await CargoLab.Issue(lab, lab.Manager, request));

        Assert.Equal((issued.Number, 2), (revised.Number, revised.Revision));
        Assert.NotEqual(issued.CheckCode, revised.CheckCode);
        var replaced = (await CargoLab.Read(lab, issued.Number)).Content.Replaces!;
        Assert.Equal((issued.Number, 1, "tank T-102 was added"), (replaced.Number, replaced.Revision, replaced.Why));
        Assert.Equal((true, false), ((await CargoLab.Check(lab, issued.CheckCode)).Superseded, (await CargoLab.Check(lab, revised.CheckCode)).Superseded));
        Assert.Equal($"SUPERSEDED by {issued.Number}, revision 2", (await new ReadCertificateCopy(lab.Open).Run(issued.Number, 1, Cancel))!.Stamp);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Revision_OfARevisionNotSeen_IsAConflict(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await CargoLab.Released(lab);
        var issued = await CargoLab.Issued(lab, batch);
        var request = (await CargoLab.Request(lab, batch)) with { Replaces = issued.Number, ReplacesRevision = 1, ReplacesWhy = "the berth was wrong" };
        Done(await CargoLab.Issue(lab, lab.Chemist, request));

        var late = await CargoLab.Issue(lab, lab.Manager, request with { CommandId = Guid.NewGuid() });
        var silent = await CargoLab.Issue(lab, lab.Manager, request with { ReplacesWhy = " " });

        Assert.Equal(AnswerKind.Conflict, late.Kind);
        Assert.Equal("/replacesWhy", Assert.Single(silent.Problems).Field);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Check_BeforeSigning_FindsWhatSigningWould(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var request = (await CargoLab.Request(lab, await CargoLab.Released(lab))) with { Ship = "", Tanks = [new CargoTankRequest("T-999", "nothing", Guid.Empty)] };

        var problems = await new IssueCargoCertificate(lab.Open, lab.Lab.Clock, null!).Check(lab.Chemist, request, Cancel);

        Assert.Equal(["/ship", "/tanks/0/tank", "/tanks/0/batch"], problems.Select(p => p.Field));
    }
}
