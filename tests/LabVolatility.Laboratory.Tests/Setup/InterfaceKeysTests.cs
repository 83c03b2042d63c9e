using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Setup;

public sealed class InterfaceKeysTests
{
    private static readonly Actor Administrator = new(Guid.Parse("0198c0de-0000-7000-8000-0000000000ad"), "Ada Min", Roles.Administrator, "page");

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Find_GoodKey_IsItsOwnersAndSignsNothing(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var made = await Make(laboratory, KeyScopes.Calculate | KeyScopes.Read);

        var holder = await Keys(laboratory).Find(made.Secret, Cancel);

        Assert.NotNull(holder);
        Assert.True(holder.Opens(KeyScopes.Read));
        Assert.False(holder.Opens(KeyScopes.Write));
        Assert.True(holder.Actor.IsKey);
        Assert.Equal("interface", holder.Actor.Origin);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Make_Secret_IsKeptNowhere(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);

        var made = await Make(laboratory, KeyScopes.Read);

        await using var lab = laboratory.Open();
        var key = await lab.Keys.SingleAsync(Cancel);
        Assert.DoesNotContain(made.Secret, key.Hash, StringComparison.Ordinal);
        Assert.StartsWith(key.Prefix, made.Secret, StringComparison.Ordinal);
        Assert.True(made.Secret.Length >= key.Prefix.Length + 32);
        Assert.All(await lab.AuditRecords.ToListAsync(Cancel), record =>
        {
            Assert.DoesNotContain(made.Secret, record.After ?? "", StringComparison.Ordinal);
            Assert.DoesNotContain(key.Hash, record.After ?? "", StringComparison.Ordinal);
        });
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Find_UnknownCutEndedRevokedOrClosed_IsNobodys(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var (ended, revoked, closed) = (await Make(laboratory, KeyScopes.Read, 1), await Make(laboratory, KeyScopes.Read), await Make(laboratory, KeyScopes.Read, owner: "o.lie"));
        await new RevokeKey(laboratory.Open, laboratory.Clock).Run(Administrator, revoked.Id, Cancel);
        await Close(laboratory, "o.lie");
        laboratory.Clock.Advance(TimeSpan.FromDays(1));

        foreach (var secret in new[] { ended.Secret, revoked.Secret, closed.Secret, ended.Secret[..^1], ended.Secret + "A", "", " ", new string('x', 10_000) })
            Assert.Null(await Keys(laboratory).Find(secret, Cancel));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Find_UsedOften_NotesTheUseOnceAMinute(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var made = await Make(laboratory, KeyScopes.Read);
        var first = laboratory.Clock.GetUtcNow();

        await Keys(laboratory).Find(made.Secret, Cancel);
        laboratory.Clock.Advance(TimeSpan.FromSeconds(30));
        await Keys(laboratory).Find(made.Secret, Cancel);
        var noted = await LastUse(laboratory);
        laboratory.Clock.Advance(TimeSpan.FromSeconds(31));
        await Keys(laboratory).Find(made.Secret, Cancel);

        Assert.Equal(first, noted);
        Assert.Equal(first.AddSeconds(61), await LastUse(laboratory));
    }

    [Fact]
    public async Task Find_DemoKeyOutsideDemo_IsNobodys()
    {
        await using var laboratory = await TestLaboratory.Create(StorageEngine.Sqlite);

        Assert.Null(await Keys(laboratory).Find("a-demo-key-of-some-length", Cancel));
        Assert.Throws<ArgumentException>(() => DemoKey.From("fifteen-letters"));
    }

    [Theory]
    [InlineData("", KeyScopes.Read, 30, "/name")]
    [InlineData("import", KeyScopes.None, 30, "/scopes")]
    [InlineData("import", (KeyScopes)16, 30, "/scopes")]
    [InlineData("import", KeyScopes.Read, 0, "/days")]
    [InlineData("import", KeyScopes.Read, 731, "/days")]
    public async Task Make_SomethingWrong_NamesTheField(string name, KeyScopes scopes, int days, string field)
    {
        await using var laboratory = await TestLaboratory.Create(StorageEngine.Sqlite);
        var owner = await Owner(laboratory, "m.berg");

        var answer = await new MakeKey(laboratory.Open, laboratory.Clock).Run(Administrator, new NewKey(name, owner, scopes, days), Cancel);

        Assert.Equal(field, Assert.Single(answer.Problems).Field);
    }

    private static InterfaceKeys Keys(TestLaboratory laboratory) => new(laboratory.Open, laboratory.Clock, null);

    private static async Task<KeyMade> Make(TestLaboratory laboratory, KeyScopes scopes, int days = 30, string owner = "m.berg")
    {
        var ownerId = await Owner(laboratory, owner);
        var made = await new MakeKey(laboratory.Open, laboratory.Clock).Run(Administrator, new NewKey("planning", ownerId, scopes, days), Cancel);
        Assert.True(made.Ok, made.Text);
        return made.Value!;
    }

    private static async Task<Guid> Owner(TestLaboratory laboratory, string userName)
    {
        await using var lab = laboratory.Open();
        if (await lab.People.SingleOrDefaultAsync(p => p.UserName == userName, Cancel) is { } there)
            return there.Id;
        var added = await new AddPerson(laboratory.Open, laboratory.Clock, new PasswordHasher<Person>())
            .Run(Administrator, new NewPerson(userName, "Planning System", Roles.None, IsService: true), Cancel);
        return added.Value!.Id;
    }

    private static async Task Close(TestLaboratory laboratory, string userName)
    {
        var closed = await new SetPersonActive(laboratory.Open, laboratory.Clock).Run(Administrator, await Owner(laboratory, userName), false, "ended", Cancel);
        Assert.Equal(AnswerKind.Done, closed.Kind);
    }

    private static async Task<DateTimeOffset?> LastUse(TestLaboratory laboratory)
    {
        await using var lab = laboratory.Open();
        return await lab.Keys.Select(k => k.LastUsedAt).SingleAsync(Cancel);
    }
}
