using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Web.Layout;
using LabVolatility.Web.People;
using LabVolatility.Web.Tests.Setup;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace LabVolatility.Web.Tests.People;

/// <summary>A signature is the signer's own password, checked once; it reaches no log.</summary>
public sealed class PasswordSignatureTests
{
    [Fact]
    public void Signature_AsText_HoldsNoPassword()
    {
        var signature = new Signature(new Actor(Guid.NewGuid(), "Tessa Marlowe", Roles.ShiftChemist, "page"), "why", "night-train-to-harbour");

        Assert.Equal("Signature of Tessa Marlowe", signature.ToString());
    }

    [Fact]
    public async Task PasswordSignature_OwnWrongAndKey_SaysWhatStandsAgainstIt()
    {
        await using var host = await LabHost.StartAsync(demo: true);
        await using var scope = host.Services.CreateAsyncScope();
        var person = LabHost.Demo("Tessa Marlowe");
        await using var lab = host.Open();
        var actor = new Actor(lab.People.Single(p => p.UserName == person.UserName).Id, person.FullName, person.Roles, "page");
        var signature = scope.ServiceProvider.GetRequiredService<PasswordSignature>();
        var cancel = TestContext.Current.CancellationToken;

        Assert.Same(signature, scope.ServiceProvider.GetRequiredService<ISignature>());
        Assert.True(await signature.IsRightAsync(actor, person.Password, cancel));
        Assert.Null(signature.Problem);
        Assert.False(await signature.IsRightAsync(actor, "three-grey-herons-wade", cancel));
        Assert.Contains("Nothing was signed", signature.Problem, StringComparison.Ordinal);
        Assert.False(await signature.IsRightAsync(actor with { IsKey = true }, person.Password, cancel));
    }

    // A night with six batches waiting is no attack.
    [Fact]
    public async Task PasswordSignature_ManyRightOnes_AreAllTaken()
    {
        await using var host = await LabHost.StartWithPeopleAsync();
        await using var scope = host.Services.CreateAsyncScope();
        var signature = scope.ServiceProvider.GetRequiredService<PasswordSignature>();
        var person = LabHost.Demo("Tessa Marlowe");
        await using var lab = host.Open();
        var id = await lab.People.Where(p => p.UserName == person.UserName).Select(p => p.Id).SingleAsync(TestContext.Current.CancellationToken);
        var actor = new Actor(id, person.FullName, Roles.ShiftChemist, "page");

        for (var i = 0; i < 8; i++)
            Assert.True(await signature.IsRightAsync(actor, person.Password, TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task PasswordSignature_TooManyTries_AsksToWait()
    {
        await using var host = await LabHost.StartAsync(demo: true);
        await using var scope = host.Services.CreateAsyncScope();
        var signature = scope.ServiceProvider.GetRequiredService<PasswordSignature>();
        var nobody = new Actor(Guid.NewGuid(), "Nobody", Roles.ShiftChemist, "page");

        for (var i = 0; i < 6; i++)
            Assert.False(await signature.IsRightAsync(nobody, "wrong", TestContext.Current.CancellationToken));

        Assert.Contains("wait a minute", signature.Problem, StringComparison.Ordinal);
    }
}
