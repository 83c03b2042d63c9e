using LabVolatility.Laboratory.Batches;
using LabVolatility.Web.Layout;

namespace LabVolatility.Web.Batches;

/// <summary>Other parties, their seals and how their results stand, in words.</summary>
public static class PartyWords
{
    public static string Of(PartyKind kind) => kind switch
    {
        PartyKind.Inspector => "inspector",
        PartyKind.Recipient => "recipient",
        _ => "third laboratory",
    };

    public static string Of(SealMatch match) => match switch
    {
        SealMatch.Matches => "our seal",
        SealMatch.NotOurs => "not our seal",
        SealMatch.OursNotRecorded => "we recorded no seal",
        _ => "not stated",
    };

    public static string Of(PartyComparison held) => held.Agree switch
    {
        true => "agrees",
        false => "differs by more than allowed",
        null => "can't be judged",
    };

    public static Mark Mark(PartyComparison held) => held.Agree switch
    {
        true => Layout.Mark.Conforms,
        false => Layout.Mark.DoesNotConform,
        null => Layout.Mark.NotDecided,
    };
}
