using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace LabVolatility.Laboratory.Tests.People;

public sealed class AccountsTests
{
    private static readonly Actor Administrator = new(Guid.Parse("0198c0de-0000-7000-8000-0000000000ad"), "Ada Min", Roles.Administrator, "page");
    private static readonly PasswordHasher<Person> Hasher = new();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task AddPerson_Administrator_OpensWithAOneTimePassword(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);

        var added = await Add(laboratory, "m.berg", Roles.Analyst);

        await using var lab = laboratory.Open();
        var person = await lab.People.SingleAsync(p => p.UserName == "m.berg", Cancel);
        Assert.Null(person.PasswordSetAt);
        Assert.Equal(PasswordVerificationResult.Success, Hasher.VerifyHashedPassword(person, person.PasswordHash!, added.OneTimePassword!));
        Assert.Null(await new FindActor(laboratory.Open).Run(person.Id, "page", Cancel));
        var record = await lab.AuditRecords.SingleAsync(r => r.Action == "open account", Cancel);
        Assert.DoesNotContain(person.PasswordHash!, record.After, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task AddPerson_NameTaken_IsRefused(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await Add(laboratory, "m.berg", Roles.Analyst);

        var again = await new AddPerson(laboratory.Open, laboratory.Clock, Hasher).Run(Administrator, new NewPerson("m.berg", "Mona Berg", Roles.Analyst), Cancel);

        Assert.Equal(AnswerKind.Invalid, again.Kind);
        Assert.Equal("/userName", Assert.Single(again.Problems).Field);
    }

    [Theory]
    [InlineData("", "Mona Berg", Roles.Analyst, "/userName")]
    [InlineData("M.Berg", "Mona Berg", Roles.Analyst, "/userName")]
    [InlineData("1berg", "Mona Berg", Roles.Analyst, "/userName")]
    [InlineData("m.berg", " ", Roles.Analyst, "/fullName")]
    [InlineData("m.berg", "Mona Berg", Roles.None, "/roles")]
    public async Task AddPerson_SomethingWrong_NamesTheField(string userName, string fullName, Roles roles, string field)
    {
        await using var laboratory = await TestLaboratory.Create(StorageEngine.Sqlite);

        var answer = await new AddPerson(laboratory.Open, laboratory.Clock, Hasher).Run(Administrator, new NewPerson(userName, fullName, roles), Cancel);

        Assert.Equal(field, Assert.Single(answer.Problems).Field);
    }

    [Theory]
    [InlineData(Roles.Analyst)]
    [InlineData(Roles.ShiftChemist)]
    [InlineData(Roles.BlendingEngineer)]
    [InlineData(Roles.QualityManager)]
    [InlineData(Roles.Auditor)]
    [InlineData(Roles.None)]
    public async Task Accounts_WithoutTheRole_AreForbidden(Roles roles)
    {
        await using var laboratory = await TestLaboratory.Create(StorageEngine.Sqlite);
        var somebody = new Actor(Guid.NewGuid(), "Some Body", roles, "page");
        var id = Guid.NewGuid();

        Assert.Equal(AnswerKind.Forbidden, (await new AddPerson(laboratory.Open, laboratory.Clock, Hasher).Run(somebody, new NewPerson("m.berg", "Mona Berg", Roles.Administrator), Cancel)).Kind);
        Assert.Equal(AnswerKind.Forbidden, (await new ChangeRoles(laboratory.Open).Run(somebody, id, "Mona Berg", Roles.Administrator, Cancel)).Kind);
        Assert.Equal(AnswerKind.Forbidden, (await new ResetPassword(laboratory.Open, Hasher).Run(somebody, id, Cancel)).Kind);
        Assert.Equal(AnswerKind.Forbidden, (await new SetPersonActive(laboratory.Open, laboratory.Clock).Run(somebody, id, false, null, Cancel)).Kind);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task LastAdministrator_StaysOne(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var only = await Add(laboratory, "only.one", Roles.Administrator);

        var roles = await new ChangeRoles(laboratory.Open).Run(Administrator, only.Id, "Only One", Roles.Auditor, Cancel);
        var closed = await new SetPersonActive(laboratory.Open, laboratory.Clock).Run(Administrator, only.Id, false, "left", Cancel);
        await Add(laboratory, "second.one", Roles.Administrator);
        var then = await new SetPersonActive(laboratory.Open, laboratory.Clock).Run(Administrator, only.Id, false, "left", Cancel);

        Assert.Equal(AnswerKind.Refused, roles.Kind);
        Assert.Equal(AnswerKind.Refused, closed.Kind);
        Assert.True(then.Ok, then.Text);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task NewRolesAndPasswords_EndSessions(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var person = await Add(laboratory, "m.berg", Roles.Analyst);
        var stamps = new List<string?> { await Stamp(laboratory, person.Id) };

        await new ChangeRoles(laboratory.Open).Run(Administrator, person.Id, "Mona Berg", Roles.ShiftChemist, Cancel);
        stamps.Add(await Stamp(laboratory, person.Id));
        await new ChangePassword(laboratory.Open, laboratory.Clock, Hasher).Run(person.Id, "seven-otters-by-the-weir", Cancel);
        stamps.Add(await Stamp(laboratory, person.Id));
        await new ResetPassword(laboratory.Open, Hasher).Run(Administrator, person.Id, Cancel);
        stamps.Add(await Stamp(laboratory, person.Id));
        await new SetPersonActive(laboratory.Open, laboratory.Clock).Run(Administrator, person.Id, false, "left", Cancel);
        stamps.Add(await Stamp(laboratory, person.Id));

        Assert.Equal(stamps.Count, stamps.Distinct().Count());
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task ChangeRoles_NameAlone_KeepsSessions(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var person = await Add(laboratory, "m.berg", Roles.Analyst);
        var before = await Stamp(laboratory, person.Id);

        await new ChangeRoles(laboratory.Open).Run(Administrator, person.Id, "Mona Berg-Lie", Roles.Analyst, Cancel);

        Assert.Equal(before, await Stamp(laboratory, person.Id));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task FirstAdministrator_SecondTime_IsRefused(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var make = new MakeFirstAdministrator(laboratory.Open, laboratory.Clock, Hasher);

        var weak = await make.Run("first.one", "First One", "password", Cancel);
        var first = await make.Run("first.one", "First One", "seven-otters-by-the-weir", Cancel);
        var second = await make.Run("second.one", "Second One", "seven-otters-by-the-weir", Cancel);

        Assert.Equal("/password", Assert.Single(weak.Problems).Field);
        Assert.True(first.Ok, first.Text);
        Assert.Equal(AnswerKind.Refused, second.Kind);
    }

    [Theory]
    [InlineData("shift-chemist", Roles.ShiftChemist)]
    [InlineData("quality manager", Roles.QualityManager)]
    public async Task UserAdd_RoleAsTyped_IsUnderstood(string typed, Roles expected)
    {
        await using var laboratory = await TestLaboratory.Create(StorageEngine.Sqlite);
        var add = new UserAdd(new AddPerson(laboratory.Open, laboratory.Clock, Hasher));

        var added = await add.Run("m.berg", typed, Cancel);
        var wrong = await add.Run("o.lie", "boss", Cancel);

        await using var lab = laboratory.Open();
        Assert.Equal(expected, (await lab.People.SingleAsync(p => p.Id == added.Value!.Id, Cancel)).Roles);
        Assert.Contains("Roles are: analyst", wrong.Text, StringComparison.Ordinal);
    }

    private static async Task<PersonAdded> Add(TestLaboratory laboratory, string userName, Roles roles)
    {
        var added = await new AddPerson(laboratory.Open, laboratory.Clock, Hasher).Run(Administrator, new NewPerson(userName, "Mona Berg", roles), Cancel);
        Assert.True(added.Ok, added.Text);
        return added.Value!;
    }

    private static async Task<string?> Stamp(TestLaboratory laboratory, Guid id) =>
        (await new ReadSessionFacts(laboratory.Open).Run(id, Cancel))?.SecurityStamp;
}
