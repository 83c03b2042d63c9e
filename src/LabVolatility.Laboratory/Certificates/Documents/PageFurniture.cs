namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>What stands at the head and foot of each page.</summary>
/// <param name="HeadLeft">Who issues the document.</param>
/// <param name="HeadRight">What it is, with its state where that matters.</param>
/// <param name="FootLeft">Number and revision.</param>
/// <param name="FootMiddle">The time zone.</param>
internal sealed record PageFurniture(string HeadLeft, string HeadRight, string FootLeft, string FootMiddle);
