namespace LabVolatility.Web.Samples;

/// <summary>What a scan turned out to be: each with a word, a shape and a sound of its own.</summary>
public enum ScanVerdict
{
    Found,

    /// <summary>Known, but not for here and now: not received, refused, a bottle that may not be opened.</summary>
    WrongPlace,

    /// <summary>Known, and nothing is left to do with it.</summary>
    Done,

    /// <summary>Misread, or not of this laboratory. Nothing is ever made of it.</summary>
    Unknown,
}
