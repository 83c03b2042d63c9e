namespace LabVolatility.Browser.Tests.Harness;

/// <summary>What tests/all.sh hands over through the environment.</summary>
internal static class TestSettings
{
    /// <summary>The published application: the path of LabVolatility.Web.dll.</summary>
    public static string Application => FileNamedBy("LABVOLATILITY_TEST_APP");

    /// <summary>The key of the machine interface that the tests prepare their samples with.</summary>
    public const string DemoKey = "browser-tests-own-key";

    /// <summary>The browser's executable.</summary>
    public static string Chromium => FileNamedBy("LABVOLATILITY_TEST_CHROMIUM");

    /// <summary>Where pictures of the pages go; null: none are taken.</summary>
    public static string? Pictures => NullIfEmpty(Environment.GetEnvironmentVariable("LABVOLATILITY_PICTURES"));

    /// <summary>Where the pictures of the guide go; null: none are taken.</summary>
    public static string? GuidePictures => NullIfEmpty(Environment.GetEnvironmentVariable("LABVOLATILITY_GUIDE_PICTURES"));

    private static string FileNamedBy(string variable)
    {
        var path = NullIfEmpty(Environment.GetEnvironmentVariable(variable))
            ?? throw new InvalidOperationException($"{variable} is not set. 'bash tests/all.sh' publishes the application, finds a browser and sets it.");
        return File.Exists(path)
            ? Path.GetFullPath(path)
            : throw new InvalidOperationException($"{variable} names '{path}', and there is no such file. 'bash tests/all.sh' makes it.");
    }

    private static string? NullIfEmpty(string? text) => string.IsNullOrWhiteSpace(text) ? null : text;
}
