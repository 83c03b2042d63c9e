using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Records;

public sealed class CanonicalTextTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public static TheoryData<decimal, string> Decimals => new()
    {
        { 63.7700m, "63.77" }, { 0.000m, "0" }, { -0.0m, "0" }, { -1.50m, "-1.5" }, { 100m, "100" }, { 0.0000000001m, "0.0000000001" },
    };

    [Theory, MemberData(nameof(Decimals))]
    public void OfDecimal_TrailingZeros_Gone(decimal value, string expected) =>
        Assert.Equal(expected, CanonicalText.OfDecimal(value));

    [Theory]
    [InlineData("plain", "\"plain\"")]
    [InlineData("a\"b\\c", "\"a\\\"b\\\\c\"")]
    [InlineData("tab\tline\nbell\u0007", "\"tab\\tline\\nbell\\u0007\"")]
    [InlineData("e\u0301", "\"é\"")]
    [InlineData("<µ> 5 ≤ 6 /", "\"<µ> 5 ≤ 6 /\"")]
    public void OfText_Characters_AsRfc8785Writes(string value, string expected) =>
        Assert.Equal(expected, CanonicalText.OfText(value));

    [Fact]
    public void OfJson_AnyOrderAndSpace_OneText()
    {
        var text = CanonicalText.OfJson("""{ "b" : [ 1.50, null, true, {"z":1,"Z":2} ], "a":"x" }""");

        Assert.Equal("""{"a":"x","b":[1.5,null,true,{"Z":2,"z":1}]}""", text);
    }

    [Fact]
    public void OfInstant_OffsetAndTicks_UtcMicroseconds() =>
        Assert.Equal("\"2026-05-04T08:00:00.123456Z\"", CanonicalText.OfInstant(new DateTimeOffset(2026, 5, 4, 10, 0, 0, TimeSpan.FromHours(2)).AddTicks(1_234_567)));

    [Fact]
    public async Task Text_SameContent_SameOnBothEngines()
    {
        await using var sqlite = await TestLaboratory.Create(StorageEngine.Sqlite);
        await using var postgres = await TestLaboratory.Create(StorageEngine.Postgres);
        await FullScene.Create(sqlite);
        await CopyAsync(sqlite, postgres);

        var onSqlite = await RowsAsync(sqlite);
        var onPostgres = await RowsAsync(postgres);

        Assert.True(onSqlite.Count > 15);
        Assert.Equal(onSqlite, onPostgres);
        Assert.Equal(await TextsAsync(sqlite), await TextsAsync(postgres));
    }

    private static async Task CopyAsync(TestLaboratory from, TestLaboratory to)
    {
        await using var source = from.Open();
        List<object> things =
        [
            .. await source.People.AsNoTracking().ToListAsync(Cancel),
            .. await source.Grades.AsNoTracking().ToListAsync(Cancel),
            .. await source.Instruments.AsNoTracking().ToListAsync(Cancel),
            .. await source.Tanks.AsNoTracking().ToListAsync(Cancel),
            .. await source.Batches.AsNoTracking().ToListAsync(Cancel),
            .. await source.Samples.AsNoTracking().Include(s => s.Containers).ThenInclude(c => c.Openings).Include(s => s.Tests).ToListAsync(Cancel),
            .. await source.Determinations.AsNoTracking().Include(d => d.Revisions).Include(d => d.Results).Include(d => d.TakenOn).ToListAsync(Cancel),
            .. await source.Verifications.AsNoTracking().ToListAsync(Cancel),
            .. await source.TankMovements.AsNoTracking().ToListAsync(Cancel),
            .. await source.HandBlends.AsNoTracking().ToListAsync(Cancel),
            .. await source.BlendContents.AsNoTracking().ToListAsync(Cancel),
            .. await source.PartyResults.AsNoTracking().ToListAsync(Cancel),
            .. await source.PartyWithdrawals.AsNoTracking().ToListAsync(Cancel),
            .. await source.StepsTaken.AsNoTracking().ToListAsync(Cancel),
            .. await source.HandoverNotes.AsNoTracking().ToListAsync(Cancel),
            .. await source.HandoverTakings.AsNoTracking().ToListAsync(Cancel),
        ];
        await to.Add([.. things]);
        await to.Add([.. await source.Assessments.AsNoTracking().ToListAsync(Cancel)]);
        await to.Add([.. await source.Decisions.AsNoTracking().ToListAsync(Cancel)]);
        await to.Add([.. await source.ReviewMarks.AsNoTracking().ToListAsync(Cancel), .. await source.Certificates.AsNoTracking().ToListAsync(Cancel)]);
        await to.Add([.. await source.Cargoes.AsNoTracking().ToListAsync(Cancel), .. await source.CargoTanks.AsNoTracking().ToListAsync(Cancel)]);
    }

    private static async Task<List<string>> RowsAsync(TestLaboratory laboratory)
    {
        await using var lab = laboratory.Open();
        await lab.Database.OpenConnectionAsync(Cancel);
        var rows = new List<string>();
        foreach (var entity in lab.Model.GetEntityTypes().Where(e => e.ClrType.IsAssignableTo(typeof(IRecorded))))
            await RowReader.ReadAsync(lab, entity, (id, text) => rows.Add($"{entity.GetTableName()} {id} {text}"), Cancel);
        return [.. rows.Order(StringComparer.Ordinal)];
    }

    private static async Task<List<string?>> TextsAsync(TestLaboratory laboratory)
    {
        await using var lab = laboratory.Open();
        var texts = await lab.AuditRecords.Select(r => r.After).ToListAsync(Cancel);
        return [.. texts.Order(StringComparer.Ordinal)];
    }
}
