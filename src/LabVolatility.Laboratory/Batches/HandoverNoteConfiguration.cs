using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Batches;

internal sealed class HandoverNoteConfiguration : IEntityTypeConfiguration<HandoverNote>
{
    public void Configure(EntityTypeBuilder<HandoverNote> note)
    {
        note.ToTable("handover_notes");
        note.Property(n => n.Text).HasMaxLength(Lengths.Note);
        note.Property(n => n.AskedOf).HasMaxLength(Lengths.Name);
        note.Property(n => n.ByName).HasMaxLength(Lengths.Name);
        note.HasIndex(n => n.At);
        note.HasOne<Batch>().WithMany().HasForeignKey(n => n.BatchId);
        note.HasOne<Decision>().WithMany().HasForeignKey(n => n.DecisionId);
        note.HasOne<Person>().WithMany().HasForeignKey(n => n.By);
        note.HasOne(n => n.Taken).WithOne().HasForeignKey<HandoverTaken>(t => t.NoteId);
    }
}
