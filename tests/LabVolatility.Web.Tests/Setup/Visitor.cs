using System.Net;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Mvc.Testing;
using Xunit;

namespace LabVolatility.Web.Tests.Setup;

/// <summary>A browser without scripts: keeps cookies, fills forms.</summary>
public sealed partial class Visitor(LabHost host) : IDisposable
{
    private readonly CookieContainer _cookies = new();
    private readonly HttpClient _client = host.CreateClient(new WebApplicationFactoryClientOptions
    {
        AllowAutoRedirect = false,
        HandleCookies = false,
        BaseAddress = host.ClientOptions.BaseAddress,
    });

    /// <summary>Every Set-Cookie that came so far.</summary>
    public List<string> SetCookies { get; } = [];

    /// <summary>What the browser would send now.</summary>
    public string CookieHeader => _cookies.GetCookieHeader(host.ClientOptions.BaseAddress);

    public void Dispose() => _client.Dispose();

    public Task<HttpResponseMessage> GetAsync(string path) => SendAsync(new HttpRequestMessage(HttpMethod.Get, path));

    public async Task<string> ReadAsync(string path)
    {
        using var answer = await GetAsync(path);
        return await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
    }

    /// <summary>Opens a page and sends one of its forms.</summary>
    public async Task<HttpResponseMessage> FillAsync(string path, string form, Dictionary<string, string> fields, string? action = null)
    {
        var page = await ReadAsync(path);
        fields["__RequestVerificationToken"] = Token().Match(page).Groups[1].Value;
        fields["_handler"] = form;
        return await SendAsync(new HttpRequestMessage(HttpMethod.Post, action ?? path) { Content = new FormUrlEncodedContent(fields) });
    }

    public Task<HttpResponseMessage> SignInAsync(string name, string password, string? returnTo = null) =>
        FillAsync("/sign-in" + (returnTo is null ? "" : $"?return={Uri.EscapeDataString(returnTo)}"), "sign-in",
            new Dictionary<string, string> { ["Entry.UserName"] = name, ["Entry.Password"] = password });

    public async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request)
    {
        if (CookieHeader.Length > 0)
            request.Headers.Add("Cookie", CookieHeader);
        var answer = await _client.SendAsync(request, TestContext.Current.CancellationToken);
        if (answer.Headers.TryGetValues("Set-Cookie", out var set))
        {
            foreach (var cookie in set)
            {
                SetCookies.Add(cookie);
                _cookies.SetCookies(host.ClientOptions.BaseAddress, cookie);
            }
        }

        return answer;
    }

    [GeneratedRegex("name=\"__RequestVerificationToken\" value=\"([^\"]+)\"")]
    private static partial Regex Token();
}
