using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Batches;

internal sealed class ReviewMarkConfiguration : IEntityTypeConfiguration<ReviewMark>
{
    public void Configure(EntityTypeBuilder<ReviewMark> mark)
    {
        mark.ToTable("review_marks");
        mark.Property(m => m.Cause).HasMaxLength(Lengths.Note);
        mark.HasOne<Decision>().WithMany().HasForeignKey(m => m.DecisionId);
    }
}
