namespace LabVolatility.Web.Layout;

/// <summary>One drawing per status; no two share a shape, so that paper without colour tells them apart.</summary>
public static class MarkShapes
{
    private const string Ring = "M8 1.5a6.5 6.5 0 1 0 0 13a6.5 6.5 0 1 0 0-13z";
    private const string Disc = "M8 .8a7.2 7.2 0 1 0 0 14.4a7.2 7.2 0 1 0 0-14.4z";
    private const string Square = "M2 2h12v12H2z";
    private const string Diamond = "M8 .3l7.7 7.7-7.7 7.7L.3 8z";
    private const string Octagon = "M5.3 1.5h5.4l3.8 3.8v5.4l-3.8 3.8H5.3l-3.8-3.8V5.3z";
    private const string Triangle = "M8 1.8L15 14H1z";
    private const string Tick = "M4.6 8.3l2.3 2.4 4.5-5";
    private const string Cross = "M5.4 5.4l5.2 5.2M10.6 5.4l-5.2 5.2";
    private const string Pole = "M3 1.2v13.6";

    private static readonly Dictionary<Mark, MarkShape> All = new()
    {
        [Mark.Ready] = new("ready", "good", Ring + Tick),
        [Mark.ReadyWithWarning] = new("ready, with a warning", "open", Ring + "M8 4.2v4.6", "M7 10.6h2v2H7z"),
        [Mark.NotReady] = new("not ready", "bad", Octagon + "M4.5 8h7"),
        [Mark.Conforms] = new("conforms", "good", Solid: Disc, Cut: Tick),
        [Mark.DoesNotConform] = new("does not conform", "bad", Solid: Diamond, Cut: Cross),
        [Mark.NotDecided] = new("not decided", "open", Ring, "M8 1.5a6.5 6.5 0 0 1 0 13z"),
        [Mark.Incomplete] = new("incomplete", "open", Ring, Dashed: true),
        [Mark.NoLimit] = new("no limit", "calm", "M2 8h12"),
        [Mark.Released] = new("released", "good", Pole, "M3.5 1.8h11l-3 3.6 3 3.6h-11z"),
        [Mark.Concession] = new("released under concession", "open", Pole + "M3.5 2.2h10l-2.6 3.2 2.6 3.2h-10"),
        [Mark.OnHold] = new("on hold", "open", Solid: "M3.5 2h3.3v12H3.5zM9.2 2h3.3v12H9.2z"),
        [Mark.Rejected] = new("rejected", "bad", Solid: Square, Cut: Cross),
        [Mark.Withdrawn] = new("withdrawn", "calm", "M6.2 2.6L2.2 6.6l4 4M2.2 6.6h7.6a3.6 3.6 0 0 1 0 7.2H7"),
        [Mark.Undecided] = new("undecided", "calm", Ring),
        [Mark.InBand] = new("in band", "good", "M1.5 2.5h13M1.5 13.5h13", "M8 5.4a2.6 2.6 0 1 0 0 5.2a2.6 2.6 0 1 0 0-5.2z"),
        [Mark.OutOfBand] = new("out of band", "bad", "M1.5 8h13M1.5 14.5h13", "M8 .5a2.6 2.6 0 1 0 0 5.2a2.6 2.6 0 1 0 0-5.2z"),
        [Mark.InControl] = new("in control", "good", "M1.5 8h13M3 10.4l3-4.4 3 4 4-4.4"),
        [Mark.Signal] = new("signal", "bad", "M1.5 11.5h13M8 9.2V1.2M4.6 4.6L8 1.2l3.4 3.4"),
        [Mark.Draft] = new("draft", "calm", Square, Dashed: true),
        [Mark.Waiting] = new("waiting", "calm", "M3.5 1.8h9M3.5 14.2h9M4.8 1.8c0 4.4 6.4 7.6 6.4 12.4M11.2 1.8c0 4.4-6.4 7.6-6.4 12.4"),
        [Mark.Done] = new("done", "good", Square + Tick),
        [Mark.ForReview] = new("for review", "open", Triangle + "M8 6v4.2", "M7.1 11.4h1.8v1.6H7.1z"),
        [Mark.FromMemory] = new("from memory", "open", "M1.5 6.2c2.2-3.4 4.3 3.4 6.5 0s4.3-3.4 6.5 0M1.5 11.4c2.2-3.4 4.3 3.4 6.5 0s4.3-3.4 6.5 0"),
        [Mark.Published] = new("published", "calm", "M3 1.5h7l3 3v10H3zM5.4 7h5.2M5.4 10.4h5.2"),
        [Mark.CommonPractice] = new("common practice", "calm", "M2 4.5h12M2 8h12M2 11.5h12"),
        [Mark.LaboratoryOwn] = new("laboratory", "calm", "M6 1.5h4M6.8 1.5v5L2.6 14h10.8L9.2 6.5v-5"),
        [Mark.NotSet] = new("not set", "calm", Ring + "M4.4 11.6l7.2-7.2", Dashed: true),
        [Mark.Void] = new("void for a decision", "bad", Square + "M2 14L14 2"),
    };

    public static MarkShape Of(Mark mark) => All[mark];
}
