using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Records;

public sealed class ReadRecordsTests
{
    private static readonly Guid Ida = Guid.Parse("0198c0de-0000-7000-8000-000000000001");

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Run_PageAfterPage_NewestFirstNoneTwice(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await laboratory.Add([.. Enumerable.Range(1, 120).Select(i => new Tank { Code = $"T-{i}", Name = "Tank" })]);
        var read = new ReadRecords(laboratory.Open);

        var seen = new List<long>();
        long? next = null;
        do
        {
            var page = await read.Run(new RecordsFilter(), next, Cancel);
            Assert.InRange(page.Records.Count, 1, ReadRecords.PageSize);
            seen.AddRange(page.Records.Select(r => r.Sequence));
            next = page.Next;
        }
        while (next is not null);

        Assert.Equal(Enumerable.Range(1, 120).Select(i => (long)i).Reverse(), seen);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Run_Filters_GiveWhatFits(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var morning = laboratory.Clock.GetUtcNow();
        await laboratory.Add(new Tank { Code = "T-1", Name = "Nord 100%" });
        laboratory.Clock.Advance(TimeSpan.FromHours(1));
        await using (var lab = laboratory.Open())
        {
            lab.Act = new Act(Ida, "Ida Østby", "page", "keep tank");
            lab.Tanks.Add(new Tank { Code = "T_2", Name = "Sør" });
            lab.Grades.Add(new Grade { Code = "G-1", Name = "Grade" });
            await lab.SaveChangesAsync(Cancel);
        }

        async Task<List<string>> Found(RecordsFilter filter) =>
            [.. (await new ReadRecords(laboratory.Open).Run(filter, null, Cancel)).Records.Select(r => r.SubjectId).Order(StringComparer.Ordinal)];

        Assert.Equal(["T-1", "T_2"], await Found(new(Subject: "tank")));
        Assert.Equal(["T_2"], await Found(new(Subject: "tank", SubjectId: "T_2")));
        Assert.Equal(["G-1", "T_2"], await Found(new(ActorId: Ida)));
        Assert.Equal(["T-1"], await Found(new(Until: morning.AddMinutes(1))));
        Assert.Equal(["G-1", "T_2"], await Found(new(From: morning.AddHours(1))));
        Assert.Equal(["T_2"], await Found(new(Text: "SØR")));
        Assert.Equal(["G-1", "T_2"], await Found(new(Text: "østby")));
        Assert.Equal(["T_2"], await Found(new(Text: "t_2")));
        Assert.Equal(["T-1"], await Found(new(Text: "100%")));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Subjects_Asked_AreInWords(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);

        var subjects = new ReadRecords(laboratory.Open).Subjects();

        Assert.Contains("determination revision", subjects);
        Assert.DoesNotContain("audit record", subjects);
    }
}
