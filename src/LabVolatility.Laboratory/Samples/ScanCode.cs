using System.Globalization;
using System.Text.RegularExpressions;

namespace LabVolatility.Laboratory.Samples;

/// <summary>What the bar code on a sample or on one of its containers says.</summary>
/// <remarks>
/// A sample is S, two digits of the year, five of the serial number, check character: "S2600417B". A container is the
/// same without the check character, C, two digits of its number, check character: "S2600417C011". The two lengths
/// are fixed, so that a scan cut short never names another sample or container.
/// </remarks>
public readonly partial record struct ScanCode
{
    private const int FirstYear = 2000;
    private const int LastYear = 2099;
    private const int HighestSerial = 99_999;
    private const int HighestContainer = 99;
    private const int BodyLength = 8;

    private readonly string? _sampleNumber;

    private ScanCode(string sampleNumber, int? containerNumber) =>
        (_sampleNumber, ContainerNumber) = (sampleNumber, containerNumber);

    /// <summary>The sample's number with its check character; empty in the default value.</summary>
    public string SampleNumber => _sampleNumber ?? string.Empty;

    /// <summary>1 to 99, or null where the code names the sample as a whole.</summary>
    public int? ContainerNumber { get; }

    /// <summary>The code as printed under the bars.</summary>
    public override string ToString() =>
        ContainerNumber is { } container ? ForContainer(SampleNumber, container) : SampleNumber;

    /// <summary>The number of a sample.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Year outside 2000 to 2099, or serial outside 1 to 99999.</exception>
    public static string ForSample(int year, int serial)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(year, FirstYear);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(year, LastYear);
        ArgumentOutOfRangeException.ThrowIfLessThan(serial, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(serial, HighestSerial);
        return WithCheck(string.Create(CultureInfo.InvariantCulture, $"S{year - FirstYear:00}{serial:00000}"));
    }

    /// <summary>The code of one container of a sample.</summary>
    /// <exception cref="ArgumentException">It is no sample number.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The container is outside 1 to 99.</exception>
    public static string ForContainer(string sampleNumber, int container)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(container, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(container, HighestContainer);
        if (!TryParse(sampleNumber, out var sample) || sample.ContainerNumber is not null)
            throw new ArgumentException("A sample number is like S2600417B.", nameof(sampleNumber));
        return WithCheck(string.Create(
            CultureInfo.InvariantCulture, $"{sample.SampleNumber.AsSpan(0, BodyLength)}C{container:00}"));
    }

    /// <summary>Reads a scan or what a person typed: false for a code that is damaged or not ours.</summary>
    public static bool TryParse(string? text, out ScanCode code)
    {
        code = default;
        var trimmed = Trimmed(text);
        if (!Whole().IsMatch(trimmed) || !CheckCharacter.Fits(trimmed.AsSpan(1)))
            return false;
        var body = trimmed[..BodyLength];
        var container = trimmed.Length > BodyLength + 1
            ? int.Parse(trimmed.AsSpan(BodyLength + 1, 2), CultureInfo.InvariantCulture)
            : (int?)null;
        code = new ScanCode(WithCheck(body), container);
        return true;
    }

    /// <summary>True where a text holds what can only come from one of our labels, whole or damaged.</summary>
    /// <remarks>A number field asks this, so that a scan is never taken for a reading.</remarks>
    public static bool LooksLikeOurs(string? text) => Trace().IsMatch(Trimmed(text));

    private static string WithCheck(string body) => body + CheckCharacter.For(body.AsSpan(1));

    private static string Trimmed(string? text) =>
        string.Concat((text ?? string.Empty).Where(c => !char.IsControl(c))).Trim().ToUpperInvariant();

    [GeneratedRegex("^S[0-9]{2}(?!00000)[0-9]{5}(C(?!00)[0-9]{2})?[0-9A-X]\\z", RegexOptions.CultureInvariant)]
    private static partial Regex Whole();

    [GeneratedRegex("S[0-9]{5,}|[0-9]{5,}C[0-9]", RegexOptions.CultureInvariant)]
    private static partial Regex Trace();
}
