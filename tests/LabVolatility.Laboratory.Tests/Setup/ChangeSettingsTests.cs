using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Setup;

public sealed class ChangeSettingsTests
{
    private static readonly Actor Administrator = new(Guid.Parse("0198c0de-0000-7000-8000-0000000000ad"), "Ada Min", Roles.Administrator, "page");

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Run_TwoAtOnce_TheSecondIsTold(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var seen = await new MakeSettings(laboratory.Open).Run(demo: false, Cancel);
        var change = new ChangeSettings(laboratory.Open);

        var first = await change.Run(Administrator, Of(seen.Version) with { Name = "Fuels Laboratory" }, Cancel);
        var second = await change.Run(Administrator, Of(seen.Version) with { Name = "Other Laboratory" }, Cancel);

        Assert.True(first.Ok, first.Text);
        Assert.Equal(AnswerKind.Conflict, second.Kind);
        Assert.Equal("Fuels Laboratory", (await new ReadSettings(laboratory.Open).Run(Cancel))!.Name);
    }

    [Fact]
    public async Task Run_SomethingWrong_NamesEveryField()
    {
        await using var laboratory = await TestLaboratory.Create(StorageEngine.Sqlite);
        var seen = await new MakeSettings(laboratory.Open).Run(demo: false, Cancel);
        var wrong = new SettingsChange(" ", new string('x', 101), "Mars/Olympus", [], 0, "http://lab.example", new string('x', 1001), seen.Version);

        var answer = await new ChangeSettings(laboratory.Open).Run(Administrator, wrong, Cancel);

        Assert.Equal(
            ["/name", "/place", "/timeZone", "/shiftStarts", "/retainDays", "/publicAddress", "/emergencyNumbers"],
            answer.Problems.Select(p => p.Field));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task MakeSettings_Twice_LeavesTheFirst(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);

        var first = await new MakeSettings(laboratory.Open).Run(demo: false, Cancel);
        var second = await new MakeSettings(laboratory.Open).Run(demo: true, Cancel);

        Assert.Equal((first.Version, false), (second.Version, second.IsDemo));
    }

    private static SettingsChange Of(Guid version) =>
        new("Laboratory", null, "Europe/Oslo", [new(6, 0), new(18, 0)], 30, "https://lab.example/", "5555", version);
}
