using System.Text.Json;
using Xunit;

namespace LabVolatility.Web.Tests.Api;

/// <summary>What came back.</summary>
public sealed record Answered(int Status, string? Type, string Text, IReadOnlyDictionary<string, string> Headers)
{
    public JsonElement Json => JsonDocument.Parse(Text).RootElement;

    /// <summary>The pointers of all mistakes, in order of the alphabet.</summary>
    public IReadOnlyList<string> Pointers => [.. Json.GetProperty("errors").EnumerateObject().Select(e => e.Name).Order(StringComparer.Ordinal)];

    public Answered Is(int status)
    {
        Assert.True(status == Status, $"{Status} came, not {status}: {Text}");
        return this;
    }

    /// <summary>A refusal of a status, as problem+json with its reference.</summary>
    public Answered Refuses(int status)
    {
        Is(status);
        Assert.Equal("application/problem+json", Type);
        Assert.Equal(status, Json.GetProperty("status").GetInt32());
        Assert.NotEmpty(Json.GetProperty("reference").GetString()!);
        Assert.NotEmpty(Json.GetProperty("detail").GetString()!);
        Assert.DoesNotContain("   at ", Text, StringComparison.Ordinal);
        return this;
    }
}
