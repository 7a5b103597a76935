package chock.build;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodNode;

/** Writes out {@code equals}, {@code hashCode} and {@code toString} of a record, as the language describes them. */
final class PlainRecord {
    private static final String LEFT_OPEN = "java/lang/runtime/ObjectMethods";
    private static final String OBJECT = "Ljava/lang/Object;";

    private final ClassNode record;
    private final List<Handle> fields;

    private PlainRecord(ClassNode record, List<Handle> fields) {
        this.record = record;
        this.fields = fields;
    }

    /** True when there was anything left open in it. */
    static boolean rewrite(ClassNode node) {
        boolean any = false;
        for (MethodNode method : List.copyOf(node.methods)) {
            for (AbstractInsnNode step : method.instructions) {
                if (step instanceof InvokeDynamicInsnNode open && open.bsm.getOwner().equals(LEFT_OPEN)) {
                    List<Handle> fields = Stream.of(open.bsmArgs).skip(2).map(Handle.class::cast).toList();
                    node.methods.set(node.methods.indexOf(method), new PlainRecord(node, fields).written(method));
                    any = true;
                    break;
                }
            }
        }
        return any;
    }

    private MethodNode written(MethodNode old) {
        MethodNode method = new MethodNode(Opcodes.ASM9, old.access, old.name, old.desc, old.signature, null);
        method.visitCode();
        switch (old.name) {
            case "equals" -> equalTo(method);
            case "hashCode" -> hash(method);
            case "toString" -> text(method);
            default -> throw new IllegalStateException(record.name + "." + old.name);
        }
        method.visitMaxs(0, 0);
        method.visitEnd();
        return method;
    }

    private void field(MethodNode method, Handle field) {
        method.visitFieldInsn(Opcodes.GETFIELD, record.name, field.getName(), field.getDesc());
    }

    private void equalTo(MethodNode method) {
        differing(method, to -> {
            method.visitVarInsn(Opcodes.ALOAD, 0);
            method.visitVarInsn(Opcodes.ALOAD, 1);
            method.visitJumpInsn(Opcodes.IF_ACMPNE, to);
        }, Opcodes.ICONST_1);
        differing(method, to -> {
            method.visitVarInsn(Opcodes.ALOAD, 1);
            method.visitTypeInsn(Opcodes.INSTANCEOF, record.name);
            method.visitJumpInsn(Opcodes.IFNE, to);
        }, Opcodes.ICONST_0);
        for (Handle field : fields) {
            differing(method, to -> {
                method.visitVarInsn(Opcodes.ALOAD, 0);
                field(method, field);
                method.visitVarInsn(Opcodes.ALOAD, 1);
                method.visitTypeInsn(Opcodes.CHECKCAST, record.name);
                field(method, field);
                goOnWhenEqual(method, field.getDesc(), to);
            }, Opcodes.ICONST_0);
        }
        method.visitInsn(Opcodes.ICONST_1);
        method.visitInsn(Opcodes.IRETURN);
    }

    /** Steps that go on behind what follows them, or else return this. */
    private static void differing(MethodNode method, java.util.function.Consumer<Label> steps, int otherwise) {
        Label on = new Label();
        steps.accept(on);
        method.visitInsn(otherwise);
        method.visitInsn(Opcodes.IRETURN);
        method.visitLabel(on);
        method.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
    }

    private static void goOnWhenEqual(MethodNode method, String kind, Label to) {
        switch (kind) {
            case "Z", "B", "S", "C", "I" -> method.visitJumpInsn(Opcodes.IF_ICMPEQ, to);
            case "J" -> {
                method.visitInsn(Opcodes.LCMP);
                method.visitJumpInsn(Opcodes.IFEQ, to);
            }
            case "F", "D" -> {
                String wrapper = kind.equals("F") ? "java/lang/Float" : "java/lang/Double";
                method.visitMethodInsn(Opcodes.INVOKESTATIC, wrapper, "compare", "(" + kind + kind + ")I", false);
                method.visitJumpInsn(Opcodes.IFEQ, to);
            }
            default -> {
                method.visitMethodInsn(Opcodes.INVOKESTATIC, "java/util/Objects", "equals", "(" + OBJECT + OBJECT + ")Z", false);
                method.visitJumpInsn(Opcodes.IFNE, to);
            }
        }
    }

    private void hash(MethodNode method) {
        method.visitInsn(Opcodes.ICONST_0);
        for (Handle field : fields) {
            method.visitIntInsn(Opcodes.BIPUSH, 31);
            method.visitInsn(Opcodes.IMUL);
            method.visitVarInsn(Opcodes.ALOAD, 0);
            field(method, field);
            String kind = field.getDesc();
            if (kind.length() == 1) {
                method.visitMethodInsn(Opcodes.INVOKESTATIC, Boxes.of(Type.getType(kind)), "hashCode", "(" + kind + ")I", false);
            } else {
                method.visitMethodInsn(Opcodes.INVOKESTATIC, "java/util/Objects", "hashCode", "(" + OBJECT + ")I", false);
            }
            method.visitInsn(Opcodes.IADD);
        }
        method.visitInsn(Opcodes.IRETURN);
    }

    private void text(MethodNode method) {
        String builder = "java/lang/StringBuilder";
        method.visitTypeInsn(Opcodes.NEW, builder);
        method.visitInsn(Opcodes.DUP);
        method.visitMethodInsn(Opcodes.INVOKESPECIAL, builder, "<init>", "()V", false);
        List<String> before = new ArrayList<>(List.of(simpleName() + "["));
        for (Handle field : fields) {
            append(method, String.join("", before) + field.getName() + "=");
            before = List.of(", ");
            method.visitVarInsn(Opcodes.ALOAD, 0);
            field(method, field);
            String kind = field.getDesc();
            String taken = kind.length() > 1 ? OBJECT : kind.equals("B") || kind.equals("S") ? "I" : kind;
            method.visitMethodInsn(Opcodes.INVOKEVIRTUAL, builder, "append", "(" + taken + ")L" + builder + ";", false);
        }
        append(method, fields.isEmpty() ? simpleName() + "[]" : "]");
        method.visitMethodInsn(Opcodes.INVOKEVIRTUAL, builder, "toString", "()Ljava/lang/String;", false);
        method.visitInsn(Opcodes.ARETURN);
    }

    private static void append(MethodNode method, String text) {
        method.visitLdcInsn(text);
        method.visitMethodInsn(Opcodes.INVOKEVIRTUAL, "java/lang/StringBuilder", "append",
                "(Ljava/lang/String;)Ljava/lang/StringBuilder;", false);
    }

    private String simpleName() {
        return record.innerClasses.stream().filter(inner -> inner.name.equals(record.name)).map(inner -> inner.innerName)
                .findFirst().orElse(record.name.substring(record.name.lastIndexOf('/') + 1));
    }
}
