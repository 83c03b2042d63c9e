using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Layout;

namespace LabVolatility.Web.Samples;

/// <summary>The answer to a scan, for the eye and the ear.</summary>
public sealed record ScanSaid(ScanVerdict Verdict, string Words)
{
    public Mark Mark => Verdict switch
    {
        ScanVerdict.Found => Mark.Ready,
        ScanVerdict.WrongPlace => Mark.ReadyWithWarning,
        ScanVerdict.Done => Mark.Done,
        _ => Mark.NotReady,
    };

    public string Word => Verdict switch
    {
        ScanVerdict.Found => "found",
        ScanVerdict.WrongPlace => "wrong place",
        ScanVerdict.Done => "already done",
        _ => "not found",
    };

    /// <summary>True where the person has to look.</summary>
    public bool Alarms => Verdict is ScanVerdict.WrongPlace or ScanVerdict.Unknown;

    /// <param name="answer">What the laboratory knows of the code.</param>
    /// <param name="measures">True at the bench: there a sample is good only for measuring.</param>
    public static ScanSaid Of(Answer<ScannedSample> answer, bool measures)
    {
        if (answer.Value is not { } found)
            return new ScanSaid(ScanVerdict.Unknown, answer.Text);
        var name = $"sample {found.Number}{(found.Container is { } container ? $", container {container}" : "")}";
        if (!measures)
            return new ScanSaid(ScanVerdict.Found, $"{name}.");
        return (found.State, found.Waiting.Count) switch
        {
            (SampleState.Announced, _) => new ScanSaid(ScanVerdict.WrongPlace, $"{name} is announced, not received yet: receive it first."),
            (SampleState.Refused, _) => new ScanSaid(ScanVerdict.WrongPlace, $"{name} was refused at receipt: it is not measured."),
            (_, 0) => new ScanSaid(ScanVerdict.Done, $"{name} has no test that waits."),
            _ when found.WhyNot is { } why => new ScanSaid(ScanVerdict.WrongPlace, $"{name}: {why}"),
            _ => new ScanSaid(ScanVerdict.Found, $"{name}."),
        };
    }
}
