using System.Net.Http.Headers;
using System.Net.Http.Json;
using System.Text.Json;
using LabVolatility.Browser.Tests.Harness;
using Xunit;

namespace LabVolatility.Browser.Tests.Samples;

/// <summary>A batch of its own for one test, with a sample in three bottles (the last sealed one is kept), made through the machine interface.</summary>
/// <remarks>Class D of EN 228, DVPE 60.0 to 90.0 kPa: the same all the year, whenever the tests run.</remarks>
internal sealed class Prepared : IDisposable
{
    private const string Method = "EN 13016-1";
    private static int _last;
    private readonly HttpClient _client;

    private Prepared(Uri address, string batch)
    {
        _client = new HttpClient { BaseAddress = address };
        _client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", TestSettings.DemoKey);
        Batch = batch;
    }

    public string Batch { get; }

    public string Sample { get; private set; } = "";

    /// <summary>What the labels of the bottles say, the first bottle's first.</summary>
    public IReadOnlyList<string> Labels { get; private set; } = [];

    public string BenchAddress => $"/bench/{Sample}/EN-13016-1";

    /// <summary>Of grade G95: one determination, simple acceptance.</summary>
    public static Task<Prepared> MakeAsync(Stage stage) => MakeAsync(stage.Address);

    /// <summary>The same in another running laboratory.</summary>
    public static Task<Prepared> MakeAsync(Uri laboratory) => MakeAsync(laboratory, "G95", null);

    /// <summary>Of grade G95-E10: a duplicate is asked for, guarded acceptance at 95 %.</summary>
    public static Task<Prepared> WithDuplicateAsync(Stage stage) => MakeAsync(stage.Address, "G95-E10", 9.6m);

    private static async Task<Prepared> MakeAsync(Uri laboratory, string grade, decimal? ethanolPercent)
    {
        var prepared = new Prepared(laboratory, $"BT-{Environment.ProcessId}-{Interlocked.Increment(ref _last)}");
        var now = TimeProvider.System.GetUtcNow();
        await prepared.PostAsync("batches", new
        {
            number = prepared.Batch,
            grade,
            state = "finished",
            ethanolPercent,
            destinations = new[] { new { area = "EN228-D", pointOfCompliance = "terminal" } },
            from = now.ToString("yyyy-MM-dd", null),
            until = now.AddDays(7).ToString("yyyy-MM-dd", null),
        });
        var bottle = new { container = "glass-bottle", containerVolume = new { value = 1, unit = "L" }, fillPercent = 75, seal = "BT-1" };
        var sample = await prepared.PostAsync("samples", new
        {
            grade,
            batch = prepared.Batch,
            level = "running",
            sampledAt = now.AddHours(-1),
            sampledBy = "Field operator",
            receivedAt = now.AddMinutes(-20),
            containers = new[] { bottle, bottle, bottle },
        });
        prepared.Sample = sample.GetProperty("number").GetString()!;
        prepared.Labels = [.. sample.GetProperty("containers").EnumerateArray().Select(c => c.GetProperty("code").GetString()!)];
        return prepared;
    }

    /// <summary>Measures a bottle; the person named counts as its measurer.</summary>
    public Task MeasureAsync(decimal totalKpa, string measuredBy, int bottle = 1) => PostAsync($"samples/{Sample}/determinations", new
    {
        method = Method,
        containerNumber = bottle,
        instrument = "VP-1",
        measuredAt = TimeProvider.System.GetUtcNow(),
        measuredBy,
        readings = new
        {
            totalPressure = new { value = totalKpa, unit = "kPa" },
            temperature = new { value = 37.8m, unit = "degC" },
            vaporLiquidRatio = 4.0m,
        },
        handling = new { chilledTo = new { value = 0.5m, unit = "degC" }, airSaturated = true },
    });

    public void Dispose() => _client.Dispose();

    private async Task<JsonElement> PostAsync(string path, object body)
    {
        var cancellation = TestContext.Current.CancellationToken;
        using var answer = await _client.PostAsJsonAsync(new Uri($"api/v1/{path}", UriKind.Relative), body, cancellation);
        var text = await answer.Content.ReadAsStringAsync(cancellation);
        Assert.True(answer.IsSuccessStatusCode, $"{path}: {(int)answer.StatusCode} {text}");
        return JsonDocument.Parse(text).RootElement.Clone();
    }
}
