using LabVolatility.Laboratory.Setup;
using Xunit;

namespace LabVolatility.Web.Tests.Api;

[Collection(InterfaceTests.Name)]
public sealed class KeysTests(InterfaceScene scene)
{
    private static readonly (string Method, string Path, KeyScopes Scope)[] Addresses =
    [
        ("POST", "/calculations/results", KeyScopes.Calculate),
        ("POST", "/calculations/precision", KeyScopes.Calculate),
        ("POST", "/calculations/conformity", KeyScopes.Calculate),
        ("GET", "/catalogue/areas", KeyScopes.Read),
        ("GET", "/catalogue/grades", KeyScopes.Read),
        ("GET", "/catalogue/methods", KeyScopes.Read),
        ("GET", "/catalogue/limits", KeyScopes.Read),
        ("POST", "/samples", KeyScopes.Write),
        ("GET", "/samples/x", KeyScopes.Read),
        ("POST", "/samples/x/determinations", KeyScopes.Write),
        ("POST", "/batches", KeyScopes.Write),
        ("GET", "/batches/x", KeyScopes.Read),
        ("GET", "/batches/x/assessment", KeyScopes.Read),
        ("GET", "/results", KeyScopes.Read),
        ("GET", "/certificates/x", KeyScopes.Read),
        ("GET", "/records/check", KeyScopes.Read),
    ];

    [Theory]
    [InlineData(KeyScopes.Calculate)]
    [InlineData(KeyScopes.Read)]
    [InlineData(KeyScopes.Write)]
    [InlineData(KeyScopes.Import)]
    public async Task Scope_EveryAddress_OpensItsOwnOnly(KeyScopes scope)
    {
        using var program = new Caller(scene.Host, await scene.KeyAsync(scope));

        foreach (var (method, path, needed) in Addresses)
        {
            var answer = await program.Send(new HttpMethod(method), path, null);

            if (needed == scope)
                Assert.NotEqual(403, answer.Status);
            else
                answer.Refuses(403);
        }
    }

    [Fact]
    public async Task Key_None_OpensNothing()
    {
        using var program = new Caller(scene.Host, null);

        foreach (var (method, path, _) in Addresses)
            Assert.Equal("Bearer", (await program.Send(new HttpMethod(method), path, null)).Refuses(401).Headers["WWW-Authenticate"]);
        (await program.Get("/openapi/v1.json")).Refuses(401);
        (await program.Get("/certificates/check/AAAA-AAAA-AAAA")).Refuses(404);
    }

    [Fact]
    public async Task Key_RevokedEndedOrCut_OpensNothing()
    {
        var key = await scene.MakeKeyAsync(KeyScopes.Read);
        using var whole = new Caller(scene.Host, key.Secret);
        (await whole.Get("/catalogue/areas")).Is(200);

        foreach (var wrong in new[] { key.Secret[..^1], key.Secret + "x", key.Secret.ToUpperInvariant(), "", new string('k', 5000), "\u00e9" })
        {
            using var program = new Caller(scene.Host, wrong);
            (await program.Get("/catalogue/areas")).Refuses(401);
        }

        await scene.RevokeAsync(key.Id);
        (await whole.Get("/catalogue/areas")).Refuses(401);
    }

    [Fact]
    public async Task Key_InTheAddress_OpensNothing()
    {
        var secret = await scene.KeyAsync(KeyScopes.Read);
        using var program = new Caller(scene.Host, null);

        (await program.Get($"/catalogue/areas?key={secret}&access_token={secret}")).Refuses(401);
    }
}
