using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Layout;

namespace LabVolatility.Web.Samples;

/// <summary>The words of a sample as people say them.</summary>
public static class SampleWords
{
    public static string Of(SampleLevel level) => level.ToString().ToLowerInvariant();

    public static string Of(ContainerKind kind) => kind.Text().Replace('-', ' ');

    /// <summary>"1 L", "250 mL".</summary>
    public static string Volume(decimal millilitres) =>
        millilitres >= 1000m ? $"{Rounding.Plain(millilitres / 1000m)} L" : $"{Rounding.Plain(millilitres)} mL";

    public static (Mark Mark, string Word) Of(SampleState state) => state switch
    {
        SampleState.Announced => (Mark.Waiting, "announced"),
        SampleState.Received => (Mark.Done, "received"),
        _ => (Mark.Rejected, "refused at receipt"),
    };

    public static (Mark Mark, string Word) Of(TestState state) => state switch
    {
        TestState.Waiting => (Mark.Waiting, "waiting"),
        TestState.Reported => (Mark.Done, "reported"),
        _ => (Mark.Withdrawn, "cancelled"),
    };

    public static string Of(ReceiptVerdict verdict) => verdict switch
    {
        ReceiptVerdict.AsExpected => "condition as expected",
        ReceiptVerdict.ProceedWithDisclaimer => "go on, with a disclaimer",
        ReceiptVerdict.Resample => "resample: this one is refused",
        _ => "reject",
    };

    /// <summary>How long until a deadline, or since: "in 2 h 10 min", "40 min late".</summary>
    public static string Until(DateTimeOffset due, DateTimeOffset now)
    {
        var left = (due - now).Duration();
        var text = left.TotalDays >= 2 ? $"{(int)left.TotalDays} d" : left.TotalHours >= 1 ? $"{(int)left.TotalHours} h {left.Minutes} min" : $"{left.Minutes} min";
        return due >= now ? $"in {text}" : $"{text} late";
    }
}
