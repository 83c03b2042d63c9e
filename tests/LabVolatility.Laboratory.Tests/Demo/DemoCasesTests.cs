using LabVolatility.Laboratory.Demo;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Demo;

[Collection(SharedDemo.Name)]
public sealed class DemoCasesTests(SharedDemo demo)
{
    public static TheoryData<StorageEngine> All => Engines.All;

    [Theory, MemberData(nameof(All))]
    public async Task Make_AllCases_AreThere(StorageEngine engine) =>
        await DemoCases.AssertAllThere(await demo.On(engine), SharedDemo.OneRound, TestContext.Current.CancellationToken);

    [Fact]
    public void People_Passwords_AreTakenByTheRules()
    {
        Assert.All(DemoPeople.All, p => Assert.Null(PasswordRules.Problem(p.Password, p.UserName, p.FullName, MakeDemoPeople.LaboratoryName)));
        Assert.Equal(2, DemoPeople.All.Count(p => Rights.Allow(p.Roles, Right.ManageReferenceData)));
    }
}
