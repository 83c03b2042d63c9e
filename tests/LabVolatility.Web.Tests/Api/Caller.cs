using System.Net.Http.Headers;
using System.Text;
using LabVolatility.Web.Tests.Setup;
using Xunit;

namespace LabVolatility.Web.Tests.Api;

/// <summary>A program that calls the interface with a key, or without one.</summary>
public sealed class Caller : IDisposable
{
    public const string Base = "/api/v1";
    private readonly HttpClient _client;

    public Caller(LabHost host, string? key)
    {
        _client = host.CreateClient();
        if (key is not null)
            _client.DefaultRequestHeaders.TryAddWithoutValidation("Authorization", $"Bearer {key}");
    }

    public Task<Answered> Post(string path, string json) => Send(HttpMethod.Post, path, new StringContent(json, Encoding.UTF8, "application/json"));

    public Task<Answered> Get(string path) => Send(HttpMethod.Get, path, null);

    public async Task<Answered> Send(HttpMethod method, string path, HttpContent? content, string? accept = null)
    {
        using var request = new HttpRequestMessage(method, path.StartsWith("/openapi", StringComparison.Ordinal) ? path : Base + path) { Content = content };
        if (accept is not null)
            request.Headers.Accept.Add(MediaTypeWithQualityHeaderValue.Parse(accept));
        using var answer = await _client.SendAsync(request, TestContext.Current.CancellationToken);
        return new Answered(
            (int)answer.StatusCode, answer.Content.Headers.ContentType?.MediaType, await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken),
            answer.Headers.Concat(answer.Content.Headers).ToDictionary(h => h.Key, h => string.Join(", ", h.Value)));
    }

    public void Dispose() => _client.Dispose();
}
