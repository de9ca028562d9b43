package stillturning.assess.crosscheck;

import stillturning.parts.element.Capacitor;
import stillturning.parts.element.Cell;
import stillturning.parts.element.Channel;
import stillturning.parts.element.Coil;
import stillturning.parts.element.Conductor;
import stillturning.parts.element.Consumer;
import stillturning.parts.element.Contact;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Element;
import stillturning.parts.element.Generator;
import stillturning.parts.element.Guard;
import stillturning.parts.element.Protector;
import stillturning.parts.element.Rectifier;

/** Leaves every element as it is; who changes some of them says which. */
class Unchanged implements Element.Visitor<Element> {

    @Override
    public Element visit(Capacitor capacitor) {
        return capacitor;
    }

    @Override
    public Element visit(Cell cell) {
        return cell;
    }

    @Override
    public Element visit(Channel channel) {
        return channel;
    }

    @Override
    public Element visit(Coil coil) {
        return coil;
    }

    @Override
    public Element visit(Conversion conversion) {
        return conversion;
    }

    @Override
    public Element visit(Conductor conductor) {
        return conductor;
    }

    @Override
    public Element visit(Consumer consumer) {
        return consumer;
    }

    @Override
    public Element visit(Contact contact) {
        return contact;
    }

    @Override
    public Element visit(Generator generator) {
        return generator;
    }

    @Override
    public Element visit(Guard guard) {
        return guard;
    }

    @Override
    public Element visit(Protector protector) {
        return protector;
    }

    @Override
    public Element visit(Rectifier rectifier) {
        return rectifier;
    }
}
